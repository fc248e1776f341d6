package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.diary.rules.MissedVisit;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.ObstacleAnswers;
import org.steadwork.people.Patient;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;

/** The latest missed visit of each open case, and the missed appointments of those without a case, with the step that follows. Six queries in all. */
@ApplicationScoped
class FollowUps {

    private static final String SELF_HARM = "of_self_harm";

    @Inject
    CaseAccess access;

    @Inject
    EntityManager db;

    @Inject
    MissedContent content;

    @Inject
    ObstacleAnswers obstacles;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** Those after which something is still to be done, what cannot wait first. */
    List<Missed> open() {
        return all().stream().filter(one -> !one.done()).sorted(Comparator.comparing(Missed::step).thenComparing(Missed::day)).toList();
    }

    Optional<Missed> find(String key) {
        return all().stream().filter(one -> one.key().equals(key)).findFirst();
    }

    private List<Missed> all() {
        Map<Long, List<Visit>> courses = db.createQuery("from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where c.closedOn is null"
                        + " and exists (select 1 from Visit m where m.caseFile = c and m.attendance = ?1) order by v.visitedOn, v.number", Visit.class)
                .setParameter(1, Attendance.MISSED).getResultStream().collect(Collectors.groupingBy(visit -> visit.caseFile().id(), LinkedHashMap::new, Collectors.toList()));
        List<Appointment> first = db.createQuery("from Appointment a join fetch a.patient join fetch a.clinician where a.visit is null and a.firstAttendance = ?1"
                        + " and not exists (select 1 from Appointment n where n.patient = a.patient and n.visit is null and n.firstAttendance = ?1 and n.day > a.day)"
                        + " and not exists (select 1 from CaseFile c where c.patient = a.patient and c.openedOn >= a.day) order by a.day", Appointment.class)
                .setParameter(1, Attendance.MISSED).getResultList();
        Map<Long, String> urgent = urgent();
        Map<Long, List<ContactAttempt>> ofVisits = new HashMap<>();
        Map<Long, List<ContactAttempt>> ofAppointments = new HashMap<>();
        db.createQuery("from ContactAttempt t left join fetch t.visit v left join fetch t.appointment left join v.caseFile c where c is null or c.closedOn is null"
                        + " order by t.triedAt desc, t.id desc", ContactAttempt.class).getResultStream()
                .forEach(one -> (one.visit() == null ? ofAppointments : ofVisits).computeIfAbsent(one.visit() == null ? one.appointment().id() : one.visit().id(),
                        id -> new ArrayList<>()).add(one));
        List<Missed> missed = new ArrayList<>();
        courses.values().forEach(course -> ofCourse(course, urgent, ofVisits).ifPresent(missed::add));
        Map<Long, Long> planned = plannedWithoutCase();
        first.forEach(one -> missed.add(of(one.patient(), null, one, new Counts(1, 1), null, planned.getOrDefault(one.patient().id(), 0L) > 0,
                ofAppointments.getOrDefault(one.id(), List.of()))));
        return missed;
    }

    private record Counts(int inARow, int inEpisode) {
    }

    /** The latest missed visit of a course, unless the patient came since. */
    private Optional<Missed> ofCourse(List<Visit> course, Map<Long, String> urgent, Map<Long, List<ContactAttempt>> tries) {
        List<Visit> held = course.stream().filter(visit -> visit.attendance() == Attendance.ATTENDED || visit.attendance() == Attendance.MISSED).toList();
        Visit latest = held.get(held.size() - 1);
        if (latest.attendance() != Attendance.MISSED) {
            return Optional.empty();
        }
        int inARow = 0;
        for (int i = held.size() - 1; i >= 0 && held.get(i).attendance() == Attendance.MISSED; i--) {
            inARow++;
        }
        int inEpisode = (int) held.stream().filter(visit -> visit.attendance() == Attendance.MISSED).count();
        boolean newDate = course.stream().anyMatch(visit -> visit.attendance() == Attendance.PLANNED && !visit.visitedOn().isBefore(LocalDate.now(clock)));
        return Optional.of(of(latest.caseFile().patient(), latest, null, new Counts(inARow, inEpisode), urgent.get(latest.caseFile().id()), newDate,
                tries.getOrDefault(latest.id(), List.of())));
    }

    private Missed of(Patient patient, Visit visit, Appointment appointment, Counts counts, String urgentReason, boolean newDate,
            List<ContactAttempt> tries) {
        LocalDate day = visit == null ? appointment.day() : visit.visitedOn();
        MissedVisit facts = new MissedVisit(day, counts.inARow(), counts.inEpisode(), urgentReason != null, newDate, tries.stream()
                .map(one -> new MissedVisit.Try(one.triedAt().atZone(clock.getZone()).toLocalDate(), one.route(), one.reached())).toList());
        MissedVisit.Step step = facts.next(content.rule(), LocalDate.now(clock));
        if (step == MissedVisit.Step.DONE) {
            return new Missed(patient, visit, appointment, day, facts, step, "Done", "A new date stands.", tries);
        }
        MissedContent.Words words = content.words(step);
        Missed said = new Missed(patient, visit, appointment, day, facts, step, words.label(), "", tries);
        return new Missed(patient, visit, appointment, day, facts, step, words.label(),
                filled(account.clinician() && (visit == null || access.opens(visit.caseFile().id())) ? words.clinician() : words.desk(), said, urgentReason), tries);
    }

    private String filled(String words, Missed missed, String urgentReason) {
        String sent = missed.facts().letterSentOn().map(Dates::shown).orElse("");
        String until = missed.facts().letterSentOn().map(day -> Dates.shown(day.plusDays(content.rule().daysToReply()))).orElse("");
        return words.replace("{reason}", urgentReason == null ? "" : urgentReason).replace("{tried}", String.valueOf(missed.facts().routes()))
                .replace("{routes}", String.valueOf(content.rule().routesSameDay())).replace("{count}", missed.count())
                .replace("{days}", String.valueOf(content.rule().daysToReply())).replace("{sent}", sent).replace("{until}", until);
    }

    /** Why a case cannot wait: an open flag of same day or higher, or concern about self-harm. Shown to clinicians only. */
    private Map<Long, String> urgent() {
        Map<Long, String> reasons = new HashMap<>();
        obstacles.presentInOpenCases().stream().filter(answer -> answer.obstacle().equals(SELF_HARM))
                .forEach((ObstacleAnswer answer) -> reasons.put(answer.caseFile().id(), "concern about self-harm is on record"));
        db.createQuery("from Flag f join fetch f.caseFile c where f.closedAt is null and c.closedOn is null order by f.raisedAt", Flag.class).getResultStream()
                .filter(flag -> flag.urgency().atLeast(Urgency.SAME_DAY))
                .forEach(flag -> reasons.put(flag.caseFile().id(), "open red flag, " + flag.urgency().label() + ": " + Initial.large(flag.name())));
        return reasons;
    }

    private Map<Long, Long> plannedWithoutCase() {
        return db.createQuery("select a.patient.id, count(a) from Appointment a where a.visit is null and a.live = true and a.firstAttendance = ?1 and a.day >= ?2"
                + " group by a.patient.id", Object[].class).setParameter(1, Attendance.PLANNED).setParameter(2, LocalDate.now(clock)).getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (Long) row[1]));
    }
}
