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
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseScope;
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

/** The latest missed visit of each open case, and the missed appointments of those without a case, with the step that follows, in a fixed number of queries. */
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
        LocalDate today = LocalDate.now(clock);
        List<Missed> missed = new ArrayList<>(ofCases(CaseScope.all(), today, this::sees));
        missed.addAll(withoutCase(today));
        return missed;
    }

    /** The latest missed visits of the open cases of a scope on a day, in the words for a clinician who may see why. Four queries. */
    List<Missed> ofCases(CaseScope scope, LocalDate today) {
        return ofCases(scope, today, visit -> true);
    }

    private List<Missed> ofCases(CaseScope scope, LocalDate today, Predicate<Visit> seesWhy) {
        Map<Long, List<Visit>> courses = scope.bind(db.createQuery("from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where " + scope.open("c", "v.caseFile")
                        + " and exists (select 1 from Visit m where m.caseFile = c and m.attendance = :missed and not exists (select 1 from Visit s where s.caseFile = c"
                        + " and s.attendance = :came and s.visitedOn > m.visitedOn)) order by v.visitedOn, v.number", Visit.class))
                .setParameter("missed", Attendance.MISSED).setParameter("came", Attendance.ATTENDED).getResultStream()
                .collect(Collectors.groupingBy(visit -> visit.caseFile().id(), LinkedHashMap::new, Collectors.toList()));
        if (courses.isEmpty()) {
            return List.of();
        }
        Map<Long, String> urgent = urgent(scope);
        Map<Long, List<ContactAttempt>> tries = scope.bind(db.createQuery("from ContactAttempt t join fetch t.visit v join v.caseFile c where " + scope.open("c", "v.caseFile")
                        + " order by t.triedAt desc, t.id desc", ContactAttempt.class)).getResultStream().collect(Collectors.groupingBy(one -> one.visit().id()));
        List<Missed> missed = new ArrayList<>();
        courses.values().forEach(course -> ofCourse(course, urgent, tries, today, seesWhy).ifPresent(missed::add));
        return missed;
    }

    private List<Missed> withoutCase(LocalDate today) {
        List<Appointment> first = db.createQuery("from Appointment a join fetch a.patient join fetch a.clinician where a.visit is null and a.firstAttendance = ?1"
                        + " and not exists (select 1 from Appointment n where n.patient = a.patient and n.visit is null and n.firstAttendance = ?1 and n.day > a.day)"
                        + " and not exists (select 1 from CaseFile c where c.patient = a.patient and c.openedOn >= a.day) order by a.day", Appointment.class)
                .setParameter(1, Attendance.MISSED).getResultList();
        Map<Long, List<ContactAttempt>> tries = db.createQuery("from ContactAttempt t join fetch t.appointment order by t.triedAt desc, t.id desc", ContactAttempt.class)
                .getResultStream().collect(Collectors.groupingBy(one -> one.appointment().id()));
        Map<Long, Long> planned = plannedWithoutCase(today);
        return first.stream().map(one -> of(one.patient(), null, one, new Counts(1, 1), null, planned.getOrDefault(one.patient().id(), 0L) > 0,
                tries.getOrDefault(one.id(), List.of()), today, account.clinician())).toList();
    }

    /** True when whoever asks may read why a case cannot wait. */
    private boolean sees(Visit visit) {
        return account.clinician() && access.opens(visit.caseFile().id());
    }

    private record Counts(int inARow, int inEpisode) {
    }

    /** The latest missed visit of a course, unless the patient came since. */
    private Optional<Missed> ofCourse(List<Visit> course, Map<Long, String> urgent, Map<Long, List<ContactAttempt>> tries, LocalDate today, Predicate<Visit> seesWhy) {
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
        boolean newDate = course.stream().anyMatch(visit -> visit.attendance() == Attendance.PLANNED && !visit.visitedOn().isBefore(today));
        return Optional.of(of(latest.caseFile().patient(), latest, null, new Counts(inARow, inEpisode), urgent.get(latest.caseFile().id()), newDate,
                tries.getOrDefault(latest.id(), List.of()), today, seesWhy.test(latest)));
    }

    private Missed of(Patient patient, Visit visit, Appointment appointment, Counts counts, String urgentReason, boolean newDate,
            List<ContactAttempt> tries, LocalDate today, boolean seesWhy) {
        LocalDate day = visit == null ? appointment.day() : visit.visitedOn();
        MissedVisit facts = new MissedVisit(day, counts.inARow(), counts.inEpisode(), urgentReason != null, newDate, tries.stream()
                .map(one -> new MissedVisit.Try(one.triedAt().atZone(clock.getZone()).toLocalDate(), one.route(), one.reached())).toList());
        MissedVisit.Step step = facts.next(content.rule(), today);
        if (step == MissedVisit.Step.DONE) {
            return new Missed(patient, visit, appointment, day, facts, step, "Done", "A new date stands.", tries);
        }
        MissedContent.Words words = content.words(step);
        Missed said = new Missed(patient, visit, appointment, day, facts, step, words.label(), "", tries);
        return new Missed(patient, visit, appointment, day, facts, step, words.label(),
                filled(seesWhy ? words.clinician() : words.desk(), said, urgentReason), tries);
    }

    private String filled(String words, Missed missed, String urgentReason) {
        String sent = missed.facts().letterSentOn().map(Dates::shown).orElse("");
        String until = missed.facts().letterSentOn().map(day -> Dates.shown(day.plusDays(content.rule().daysToReply()))).orElse("");
        return words.replace("{reason}", urgentReason == null ? "" : urgentReason).replace("{tried}", String.valueOf(missed.facts().routes()))
                .replace("{routes}", String.valueOf(content.rule().routesSameDay())).replace("{count}", missed.count())
                .replace("{days}", String.valueOf(content.rule().daysToReply())).replace("{sent}", sent).replace("{until}", until);
    }

    /** Why a case cannot wait: an open flag of same day or higher, or concern about self-harm. Shown to clinicians only. */
    private Map<Long, String> urgent(CaseScope scope) {
        Map<Long, String> reasons = new HashMap<>();
        obstacles.present(SELF_HARM, scope).forEach((ObstacleAnswer answer) -> reasons.put(answer.caseFile().id(), "concern about self-harm is on record"));
        scope.bind(db.createQuery("from Flag f join fetch f.caseFile c where f.closedAt is null and " + scope.open("c", "f.caseFile") + " order by f.raisedAt", Flag.class)).getResultStream()
                .filter(flag -> flag.urgency().atLeast(Urgency.SAME_DAY))
                .forEach(flag -> reasons.put(flag.caseFile().id(), "open red flag, " + flag.urgency().label() + ": " + Initial.large(flag.name())));
        return reasons;
    }

    private Map<Long, Long> plannedWithoutCase(LocalDate today) {
        return db.createQuery("select a.patient.id, count(a) from Appointment a where a.visit is null and a.live = true and a.firstAttendance = ?1 and a.day >= ?2"
                + " group by a.patient.id", Object[].class).setParameter(1, Attendance.PLANNED).setParameter(2, today).getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (Long) row[1]));
    }
}
