package org.steadwork.meeting;

import java.time.LocalDate;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Reads and fills the forms on the page of a case in a meeting; each decision and action has fields of its own, told apart by a prefix. */
final class CaseOutcomeForm {

    static final String NEW_DECISION = "d-";
    static final String NEW_ACTION = "a-";
    private static final int LONGEST = 1000;
    private static final int LONGEST_ACTION = 500;

    private CaseOutcomeForm() {
    }

    static String prefix(Decision decision) {
        return "d" + decision.id() + "-";
    }

    static String prefix(MeetingAction action) {
        return "a" + action.id() + "-";
    }

    /** Returns where saving leads: "show" for the full-screen view, else blank for the page of the case. */
    static String back(String typed) {
        return "show".equals(typed) ? "show" : "";
    }

    static Form show(CaseSheet.View view) {
        AgendaCase item = view.row().item();
        Form form = show(item, Form.empty());
        form.with("back", view.back());
        view.decided().forEach(one -> show(one.decision(), form));
        view.actions().forEach(action -> show(action, form));
        return form;
    }

    static Form show(AgendaCase item, Form form) {
        return form.with("version", item == null ? 0 : item.version() + 1).with("question", item == null ? null : item.question())
                .with("minutes", item == null ? null : item.notes());
    }

    static Form show(Decision decision, Form form) {
        String prefix = prefix(decision);
        return form.with(prefix + "version", decision.version()).with(prefix + "words", decision.words()).with(prefix + "reason", decision.reason())
                .with(prefix + "who", decision.who().id()).with(prefix + "due", Dates.shown(decision.dueOn()))
                .with(prefix + "review", decision.reviewOn() == null ? null : Dates.shown(decision.reviewOn())).with(prefix + "dissent", decision.dissent());
    }

    static Form show(MeetingAction action, Form form) {
        String prefix = prefix(action);
        return form.with(prefix + "version", action.version()).with(prefix + "words", action.words()).with(prefix + "who", action.who().id())
                .with(prefix + "due", Dates.shown(action.dueOn()));
    }

    /** Returns the version a row was shown in, or -1. */
    static int version(Form form, String prefix) {
        String text = form.value(prefix + "version");
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : -1;
    }

    /** Reads a decision; what is wrong is noted at its field. */
    static Decision.Terms decision(Form form, String prefix, Map<String, Account> people, LocalDate meeting) {
        LocalDate due = due(form, prefix, meeting);
        LocalDate review = form.date(prefix + "review", "Look again on");
        if (due != null && review != null && review.isBefore(due)) {
            form.error(prefix + "review", "Look again on the day it is due, " + Dates.shown(due) + ", or later. You entered " + Dates.shown(review) + ".");
        }
        return new Decision.Terms(form.requiredText(prefix + "words", "The decision", LONGEST), form.requiredText(prefix + "reason", "The reason", LONGEST),
                who(form, prefix, people), due, review, form.text(prefix + "dissent", LONGEST));
    }

    /** An action as it was typed. */
    record ActionTerms(String words, Account who, LocalDate due) {
    }

    static ActionTerms action(Form form, String prefix, Map<String, Account> people, LocalDate meeting) {
        return new ActionTerms(form.requiredText(prefix + "words", "The action", LONGEST_ACTION), who(form, prefix, people), due(form, prefix, meeting));
    }

    private static LocalDate due(Form form, String prefix, LocalDate meeting) {
        LocalDate due = form.requiredDate(prefix + "due", "Due");
        if (due != null && due.isBefore(meeting)) {
            form.error(prefix + "due", "Due is the day of the meeting, " + Dates.shown(meeting) + ", or later. You entered " + Dates.shown(due) + ".");
        }
        return due;
    }

    private static Account who(Form form, String prefix, Map<String, Account> people) {
        Account who = people.get(form.value(prefix + "who"));
        if (who == null) {
            form.error(prefix + "who", "Who does it is missing. Choose one.");
        }
        return who;
    }
}
