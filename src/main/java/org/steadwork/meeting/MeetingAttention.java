package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Dates;

/** Tells Today which actions of review meetings are due, and which decisions wait for the treating clinician's answer. */
@ApplicationScoped
class MeetingAttention implements Attention {

    @Inject
    CaseOutcomes outcomes;

    /** Days before its day from which an action is shown. */
    @ConfigProperty(name = "steadwork.meeting.action-days-ahead", defaultValue = "3")
    int daysAhead;

    @Override
    public List<Entry> entries(LocalDate today) {
        List<Entry> entries = new ArrayList<>();
        outcomes.openActions().stream().filter(action -> !action.dueOn().isAfter(today.plusDays(daysAhead))).map(action -> due(action, today)).forEach(entries::add);
        outcomes.unanswered().stream().map(MeetingAttention::advised).forEach(entries::add);
        return entries;
    }

    private static Entry due(MeetingAction action, LocalDate today) {
        boolean late = action.dueOn().isBefore(today);
        Urgency urgency = action.dueOn().isAfter(today) ? Urgency.SOON : Urgency.TODAY;
        Entry entry = entry(action.caseFile(), urgency, late ? "Action overdue" : "Action due", action.dueOn(), "Agreed in the review meeting of "
                + Dates.shown(action.meeting().heldOn()) + ", by " + Dates.shown(action.dueOn()) + ", " + action.who().displayName() + ": " + action.words(),
                "Mark it done", "#action-" + action.id());
        return late ? entry.marked("near") : entry;
    }

    private static Entry advised(Decision decision) {
        return entry(decision.caseFile(), Urgency.TODAY, "Advised", decision.meeting().heldOn(), "The review meeting advised: " + decision.words(),
                "Accept or decline", "#decision-" + decision.id());
    }

    private static Entry entry(CaseFile file, Urgency urgency, String label, LocalDate since, String reason, String action, String place) {
        return new Entry(file.id(), file.patient().name(), urgency, label, since, reason, action, "/cases/" + file.id() + "/meetings" + place);
    }
}
