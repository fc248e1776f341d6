package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The page of a case in a meeting, shown by whoever writes on it. */
@ApplicationScoped
class CaseSheet {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance meetingCase(View view, Form form);
    }

    /**
     * What the page of a case shows.
     *
     * @param reasons that may be said in this room; {@code reasonsHeld} tells that some may not
     * @param consents the state of every consent of the case
     * @param decided  in this meeting; {@code earlier} in others
     * @param back     where saving leads: "show" for the full-screen view, else blank
     */
    record View(Agenda agenda, Agenda.Row row, CaseBrief.Shown brief, List<ReasonView> reasons, List<ReasonView> unknown, boolean reasonsHeld,
            List<String> consents, List<CaseOutcomes.Decided> decided, List<CaseOutcomes.Decided> earlier, List<MeetingAction> actions,
            List<MeetingAction> carried, List<Option> people, LocalDate today, String back) {

        public ReviewMeeting meeting() {
            return agenda.meeting();
        }

        public int position() {
            return row.place();
        }

        public Agenda.Row previous() {
            return position() > 1 ? agenda.rows().get(position() - 2) : null;
        }

        public Agenda.Row next() {
            return position() < agenda.rows().size() ? agenda.rows().get(position()) : null;
        }

        public RawString chart(CaseBrief.Score score) {
            return new RawString(score.chart().screen());
        }

        public RawString largeChart(CaseBrief.Score score) {
            return new RawString(score.chart().paper());
        }

        public String path() {
            return "/meetings/" + meeting().id() + "/cases/" + row.file().id();
        }

        public String show() {
            return "/meetings/" + meeting().id() + "/show/" + row.file().id();
        }
    }

    @Inject
    Agendas agendas;

    @Inject
    CaseBriefs briefs;

    @Inject
    Rooms rooms;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    Accounts accounts;

    @Inject
    Clock clock;

    /** Returns what the page shows; empty when the case is not on the agenda. */
    Optional<View> view(ReviewMeeting meeting, CaseFile file, String back) {
        Agenda agenda = agendas.of(meeting);
        int position = agenda.position(file.id());
        return position == 0 ? Optional.empty() : Optional.of(view(agenda, agenda.rows().get(position - 1), back));
    }

    View view(Agenda agenda, Agenda.Row row, String back) {
        long caseId = row.file().id();
        Room room = row.room();
        LocalDate today = LocalDate.now(clock);
        List<ReasonView> reasons = row.reasons().stream().filter(reason -> room.may(reason.category())).toList();
        List<ReasonView> unknown = row.unknown().stream().filter(reason -> room.may(reason.category())).toList();
        // what was decided and agreed is free text: it is for the clinicians of the clinic alone
        List<CaseOutcomes.Decided> decided = room.clinicians() ? outcomes.decisions(caseId) : List.of();
        List<MeetingAction> actions = room.clinicians() ? outcomes.actions(caseId) : List.of();
        Long id = agenda.meeting().id();
        return new View(agenda, row, briefs.of(row.file(), room).in(room), reasons, unknown,
                reasons.size() + unknown.size() < row.reasons().size() + row.unknown().size(), rooms.consents(caseId, today),
                decided.stream().filter(one -> one.decision().meeting().id().equals(id)).toList(),
                decided.stream().filter(one -> !one.decision().meeting().id().equals(id)).toList(),
                actions.stream().filter(one -> one.meeting().id().equals(id)).toList(),
                actions.stream().filter(one -> !one.meeting().id().equals(id)).filter(MeetingAction::open).toList(), people(), today, back);
    }

    /** A field of a decision or an action, which are for the clinicians of the clinic alone. */
    private static boolean ofAnOutcome(String field) {
        return field.matches("[da]\\d*-.*");
    }

    List<Option> people() {
        return accounts.all().stream().filter(Account::active).map(one -> new Option(String.valueOf(one.id()), one.displayName())).toList();
    }

    /** Shows the page with what was typed, or with what is stored; a case that left the agenda leads to the agenda. */
    Response answer(int status, ReviewMeeting meeting, CaseFile file, Form typed, String back) {
        Optional<View> view = view(meeting, file, back);
        if (view.isEmpty()) {
            return Answers.seeOther("/meetings/" + meeting.id());
        }
        Room room = view.get().row().room();
        if (status != 200 && typed != null && (room.heldBack() || !room.clinicians() && typed.fields().stream().anyMatch(CaseSheet::ofAnOutcome))) {
            return Shut.answer(meeting, typed, "Guests came into the room meanwhile, and the page does not show this while they are there. Ask them to leave, or write it down after the meeting.");
        }
        Form form = CaseOutcomeForm.show(view.get());
        if (typed != null) {
            form.fields().stream().filter(field -> !typed.fields().contains(field)).forEach(field -> typed.with(field, form.value(field)));
        }
        TemplateInstance page = Templates.meetingCase(view.get(), typed == null ? form : typed);
        return status == 409 ? Answers.conflict(page) : status == 422 ? Answers.unprocessable(page) : Answers.page(page);
    }
}
