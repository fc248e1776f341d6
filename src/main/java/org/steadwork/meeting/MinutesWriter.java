package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.account.Account;
import org.steadwork.web.Dates;

/** Writes the minutes of a meeting from what was recorded in it: case numbers, never names. */
@ApplicationScoped
class MinutesWriter {

    @Inject
    Agendas agendas;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    Clock clock;

    MinutesText draft(ReviewMeeting meeting) {
        return write(meeting, agendas.of(meeting), "");
    }

    MinutesText closed(ReviewMeeting meeting, Agenda agenda, Account by, Instant at) {
        return write(meeting, agenda, "Closed by " + by.displayName() + " on " + Dates.shown(at) + ". The meeting advises; the treating clinician decides.");
    }

    private MinutesText write(ReviewMeeting meeting, Agenda agenda, String closed) {
        Map<Long, List<CaseOutcomes.Decided>> decided = outcomes.decisionsOf(meeting.id()).stream()
                .collect(Collectors.groupingBy(one -> one.decision().caseFile().id()));
        Map<Long, List<MeetingAction>> agreed = outcomes.actionsOf(meeting.id()).stream().collect(Collectors.groupingBy(one -> one.caseFile().id()));
        List<MinutesText.Part> parts = new ArrayList<>();
        for (Agenda.Row row : agenda.rows()) {
            parts.add(part(row, decided.getOrDefault(row.file().id(), List.of()), agreed.getOrDefault(row.file().id(), List.of()), meeting));
        }
        if (!agenda.removed().isEmpty()) {
            parts.add(new MinutesText.Part("Taken off the agenda", agenda.removed().stream().map(item -> new MinutesText.Line(
                    item.caseFile().patient().fileNumber(), item.removedWhy() + " (" + item.removedBy() + ")")).toList()));
        }
        return new MinutesText("Review meeting, " + Dates.inLetter(meeting.heldOn()), about(meeting, agenda), parts, closed);
    }

    private static List<MinutesText.Line> about(ReviewMeeting meeting, Agenda agenda) {
        List<MinutesText.Line> lines = new ArrayList<>();
        lines.add(new MinutesText.Line("Held", Dates.inLetter(meeting.heldOn()) + ", " + meeting.startsAt()));
        lines.add(new MinutesText.Line("Chair", meeting.chair().displayName()));
        lines.add(new MinutesText.Line("Notes", meeting.notes().displayName()));
        lines.add(new MinutesText.Line("Present", meeting.people().stream().filter(person -> !person.guest()).map(MeetingPerson::words)
                .collect(Collectors.joining("; "))));
        lines.add(new MinutesText.Line("Guests", meeting.guests().isEmpty() ? "none" : meeting.guests().stream().map(MeetingPerson::words)
                .collect(Collectors.joining("; "))));
        lines.add(new MinutesText.Line("Cases", agenda.rows().size() + ", of " + agenda.open() + " open"));
        return lines;
    }

    private MinutesText.Part part(Agenda.Row row, List<CaseOutcomes.Decided> decided, List<MeetingAction> agreed, ReviewMeeting meeting) {
        List<MinutesText.Line> lines = new ArrayList<>();
        lines.add(new MinutesText.Line("Treating clinician", row.file().clinician().displayName()));
        lines.add(new MinutesText.Line("Why it was here", why(row)));
        if (row.question() != null) {
            lines.add(new MinutesText.Line("Question", row.question()));
        }
        if (!meeting.guests().isEmpty()) {
            lines.add(new MinutesText.Line("In the room", row.room().clinicians() ? "clinicians of the clinic only; the guests had left" : row.room().heldBack()
                    ? "held back: no consent for " + row.room().without() : "with " + row.room().all() + ", by consent"));
        }
        lines.add(new MinutesText.Line("Said", row.item() != null && row.item().notes() != null ? row.item().notes()
                : decided.isEmpty() && agreed.isEmpty() ? "not discussed" : "nothing written"));
        for (CaseOutcomes.Decided one : decided) {
            Decision decision = one.decision();
            lines.add(new MinutesText.Line("Decision", decision.words() + " Reason: " + decision.reason() + " By " + decision.who().displayName() + ", due "
                    + Dates.shown(decision.dueOn()) + (decision.reviewOn() == null ? "" : ", looked at again " + Dates.shown(decision.reviewOn())) + "."
                    + (decision.dissent() == null ? "" : " Other view: " + decision.dissent())));
        }
        agreed.forEach(action -> lines.add(new MinutesText.Line("Action", action.words() + " " + action.who().displayName() + ", by " + Dates.shown(action.dueOn()) + ".")));
        row.carried().forEach(action -> lines.add(new MinutesText.Line("Action of " + Dates.shown(action.meeting().heldOn()), action.words() + " "
                + action.who().displayName() + ", by " + Dates.shown(action.dueOn()) + ": " + action.state(LocalDate.now(clock)).label() + ".")));
        return new MinutesText.Part("Case " + row.file().patient().fileNumber(), lines);
    }

    /** The reasons as they stand now, in a line. */
    static String why(Agenda.Row row) {
        List<String> why = new ArrayList<>(row.reasons().stream().map(ReasonView::words).toList());
        row.carried().forEach(action -> why.add("Open action: " + action.words()));
        row.again().forEach(decision -> why.add("To look at again: " + decision.words()));
        row.unknown().forEach(reason -> why.add("Not known: " + reason.words()));
        return why.isEmpty() ? "put on by hand" : String.join(" ", why);
    }
}
