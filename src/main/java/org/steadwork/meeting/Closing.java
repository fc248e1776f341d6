package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Dates;

/** Closes a meeting: keeps its agenda, settles what was asked, and freezes the minutes. */
@ApplicationScoped
class Closing {

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    Agendas agendas;

    @Inject
    MinutesWriter writer;

    @Inject
    MeetingPrinter printer;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** Closes a meeting with the agenda as it stands now. */
    void close(ReviewMeeting meeting) {
        desk.keep(meeting);
        desk.flush();
        close(meeting, agendas.of(meeting), account.get(), Instant.now(clock));
    }

    /** Closes with the agenda given. */
    void close(ReviewMeeting meeting, Agenda agenda, Account by, Instant now) {
        MinutesText minutes = writer.closed(meeting, agenda, by, now);
        settle(meeting, agenda, by, now);
        desk.flush();
        meetings.add(new Minutes(meeting, minutes.plain(), printer.minutes(minutes, now), by, now));
        desk.flush();
        audit.record("closed review meeting", null, null, Dates.shown(meeting.heldOn()));
    }

    /** What was asked for a case is settled once the case was discussed; a case nobody spoke of comes back. */
    private void settle(ReviewMeeting meeting, Agenda agenda, Account by, Instant now) {
        Set<Long> discussed = new HashSet<>();
        agenda.rows().stream().filter(Agenda.Row::discussed).forEach(row -> discussed.add(row.file().id()));
        outcomes.decisionsOf(meeting.id()).forEach(one -> discussed.add(one.decision().caseFile().id()));
        outcomes.actionsOf(meeting.id()).forEach(action -> discussed.add(action.caseFile().id()));
        List<CaseAsk> asks = outcomes.openAsks();
        asks.stream().filter(ask -> discussed.contains(ask.caseFile().id()))
                .forEach(ask -> ask.settle(by.displayName(), now, "Discussed in the review meeting of " + Dates.shown(meeting.heldOn()) + "."));
    }
}
