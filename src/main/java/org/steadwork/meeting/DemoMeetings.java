package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.content.Entry;
import org.steadwork.meeting.agenda.AskKind;
import org.steadwork.meeting.agenda.Criterion;
import org.steadwork.meeting.agenda.Reason;
import org.steadwork.people.Correspondent;

/** Records the invented meetings of the demo clinic, closed by the same rules as on the pages. In a real clinic it refuses. */
@ApplicationScoped
public class DemoMeetings {

    /** Where the demo finds those it names by a key, and how it moves its clock. */
    public record Known(Function<String, Account> account, Function<String, CaseFile> file, Function<String, Correspondent> correspondent, Consumer<Instant> clock) {
    }

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    CriteriaContent criteria;

    @Inject
    Closing closing;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.demo", defaultValue = "false")
    boolean demo;

    public void load(Entry file, Known known) {
        if (!demo) {
            throw new IllegalStateException("Meetings are recorded without their pages in the demo clinic only");
        }
        for (Entry ask : file.entries("asks")) {
            meetings.add(new CaseAsk(known.file().apply(ask.text("case")), ask.constant("kind", AskKind.class), ask.text("words"),
                    known.account().apply(ask.text("by")).displayName(), moment(ask.text("at"))));
        }
        for (Entry entry : file.entries("meetings")) {
            ReviewMeeting meeting = plan(entry, known);
            if (entry.has("closed")) {
                held(meeting, entry, known);
            } else {
                entry.entries("questions").forEach(question -> ask(meeting, question, known));
            }
            desk.flush();
        }
    }

    private ReviewMeeting plan(Entry entry, Known known) {
        LocalDate day = LocalDate.parse(entry.text("held"));
        Account chair = known.account().apply(entry.text("chair"));
        ReviewMeeting meeting = new ReviewMeeting(chair.displayName(), day.minusWeeks(2).atTime(9, 0).atZone(clock.getZone()).toInstant());
        meeting.plan(day, LocalTime.parse(entry.text("time")), chair, known.account().apply(entry.text("notes")));
        List<MeetingPerson> people = new ArrayList<>();
        entry.texts("who").forEach(key -> people.add(MeetingPerson.of(meeting, known.account().apply(key))));
        entry.entries("guests").forEach(guest -> people.add(MeetingPerson.guest(meeting, guest.text("name"), guest.text("role"), null,
                known.correspondent().apply(guest.text("for")))));
        meeting.attend(people);
        meetings.persist(meeting);
        desk.flush();
        return meeting;
    }

    private void ask(ReviewMeeting meeting, Entry question, Known known) {
        AgendaCase item = desk.touch(meeting, known.file().apply(question.text("case")));
        item.stand(item.place(), question.integer("minutes"));
        item.ask(question.text("words"));
    }

    private void held(ReviewMeeting meeting, Entry entry, Known known) {
        Instant at = moment(entry.text("closed"));
        known.clock().accept(at);
        Account by = known.account().apply(entry.text("notes"));
        List<Agenda.Row> rows = new ArrayList<>();
        for (Entry written : entry.entries("cases")) {
            CaseFile file = known.file().apply(written.text("case"));
            AgendaCase item = new AgendaCase(meeting, file, rows.size() + 1, written.integer("minutes"));
            item.ask(written.text("question"));
            item.note(written.text("said"));
            meetings.add(item);
            written.entries("decisions").forEach(decided -> decide(meeting, file, decided, by, at, known));
            written.entries("actions").forEach(agreed -> agree(meeting, file, agreed, by, at, known));
            rows.add(new Agenda.Row(file, file.patient().fileNumber(), item, item.place(), item.minutes(), reasons(written, file), List.of(), List.of(), List.of(),
                    Room.CLINICIANS));
        }
        desk.flush();
        closing.close(meeting, new Agenda(meeting, false, rows, List.of(), List.of(), entry.entries("cases").size()), by, at);
    }

    private List<ReasonView> reasons(Entry written, CaseFile file) {
        return written.entries("reasons").stream().map(one -> {
            Criterion criterion = criteria.criteria().all().stream().filter(known -> known.rule().key().equals(one.text("criterion"))).findFirst()
                    .orElseThrow(() -> one.problem("there is no criterion " + one.text("criterion")));
            return new ReasonView(new Reason(criterion, true, one.text("words"), List.of()), file.id());
        }).toList();
    }

    private void decide(ReviewMeeting meeting, CaseFile file, Entry written, Account by, Instant at, Known known) {
        Decision decision = new Decision(meeting, file);
        decision.decide(new Decision.Terms(written.text("words"), written.text("reason"), known.account().apply(written.text("who")),
                LocalDate.parse(written.text("due")), written.optionalText("review").map(LocalDate::parse).orElse(null),
                written.optionalText("dissent").orElse(null)), by.displayName(), at);
        meetings.add(decision);
        written.entry("answer").ifPresent(answer -> {
            desk.flush();
            meetings.add(new DecisionAnswer(decision, answer.flag("accepted"), answer.text("why"), file.clinician(), moment(answer.text("at"))));
        });
    }

    private void agree(ReviewMeeting meeting, CaseFile file, Entry written, Account by, Instant at, Known known) {
        MeetingAction action = new MeetingAction(meeting, file);
        Account who = known.account().apply(written.text("who"));
        action.agree(written.text("words"), who, LocalDate.parse(written.text("due")), by.displayName(), at);
        meetings.add(action);
        written.optionalText("done").map(LocalDate::parse).ifPresent(day -> {
            ActionStep step = new ActionStep(action, ActionStep.State.DONE, null, day, who.displayName(), day.atTime(10, 0).atZone(clock.getZone()).toInstant());
            meetings.add(step);
            action.add(step);
        });
    }

    private Instant moment(String written) {
        return LocalDateTime.parse(written).atZone(clock.getZone()).toInstant();
    }
}
