package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.WorkPlanStep;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.letter.SentLetters;
import org.steadwork.meeting.agenda.CaseFacts;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.Obstacles;
import org.steadwork.obstacle.Screening;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.Measures;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.RedFlagScreen;
import org.steadwork.workplace.Finding;

/** Gathers what the criteria look at, for all open cases in a fixed number of queries. */
@ApplicationScoped
class FactsOfCases {

    @Inject
    EntityManager db;

    @Inject
    Measures measures;

    @Inject
    Screening screening;

    @Inject
    Obstacles obstacles;

    @Inject
    SentLetters letters;

    @Inject
    FindingWords words;

    @Inject
    Clock clock;

    /** Returns the facts of every open case on a day, in the order of the cases' numbers. */
    Map<CaseFile, CaseFacts> ofOpenCases(LocalDate today) {
        Map<CaseFile, List<MeasureCourse>> courses = measures.ofOpenCases(CaseScope.all());
        Map<Long, List<Visit>> visits = by(Visit::caseFile, list("from Visit x join x.caseFile c where c.closedOn is null order by x.visitedOn, x.number", Visit.class));
        Map<Long, List<Flag>> flags = by(Flag::caseFile, list("from Flag x join x.caseFile c where c.closedOn is null order by x.raisedAt, x.id", Flag.class));
        Map<Long, List<RedFlagScreen>> screens = by(RedFlagScreen::caseFile, list("from RedFlagScreen x join x.caseFile c where c.closedOn is null and x.id ="
                + " (select max(n.id) from RedFlagScreen n where n.caseFile = c)", RedFlagScreen.class));
        Map<Long, List<ObstacleAnswer>> answers = by(ObstacleAnswer::caseFile, list("from ObstacleAnswer x join x.caseFile c where c.closedOn is null order by x.id",
                ObstacleAnswer.class));
        Map<Long, Screening.Result> risk = screening.ofOpenCases();
        Map<Long, List<WorkStatus>> statuses = by(WorkStatus::caseFile, list("from WorkStatus x join x.caseFile c where c.closedOn is null order by x.from",
                WorkStatus.class));
        Map<Long, List<WorkPlanStep>> back = stepsBack();
        Map<Long, Long> given = given();
        Map<Long, List<AdherenceEntry>> reported = by(entry -> entry.prescription().caseFile(), list("from AdherenceEntry x join fetch x.prescription p"
                + " join p.caseFile c where c.closedOn is null order by x.weekTo", AdherenceEntry.class));
        Map<Long, List<Finding>> findings = by(Finding::caseFile, list("from Finding x join x.caseFile c where c.closedOn is null and x.checkedOn is null"
                + " and x.doneOn is null and (x.advisedOn is not null or x.agreedOn is not null) order by x.foundOn, x.id", Finding.class));
        Map<Long, List<SentLetters.Sent>> sent = letters.toEmployersInOpenCases().stream().collect(Collectors.groupingBy(SentLetters.Sent::caseId));
        Map<Long, List<CaseAsk>> asks = by(CaseAsk::caseFile, list("from CaseAsk x join x.caseFile c where c.closedOn is null and x.settledAt is null order by x.id",
                CaseAsk.class));
        Map<Long, PlannedVisits> planned = list("from PlannedVisits x", PlannedVisits.class).stream()
                .collect(Collectors.toMap(PlannedVisits::caseFileId, Function.identity()));
        Map<CaseFile, CaseFacts> facts = new LinkedHashMap<>();
        courses.forEach((file, own) -> {
            Long id = file.id();
            facts.put(file, new CaseFacts(today, file.openedOn(), FactWords.measures(own),
                    FactWords.safety(screens.getOrDefault(id, List.of()), flags.getOrDefault(id, List.of()), clock.getZone()),
                    FactWords.person(answers.getOrDefault(id, List.of()), Optional.ofNullable(risk.get(id)), obstacles),
                    FactWords.work(statuses.getOrDefault(id, List.of()), back.getOrDefault(id, List.of()), today, clock.getZone()),
                    contacts(visits.getOrDefault(id, List.of()), today),
                    FactWords.programme(given.containsKey(id), reported.getOrDefault(id, List.of())),
                    new CaseFacts.Workplace(words.waiting(findings.getOrDefault(id, List.of())), sent.getOrDefault(id, List.of()).stream()
                            .filter(letter -> !letter.answered()).map(letter -> new CaseFacts.Sent(letter.title(), letter.on())).toList()),
                    asks.getOrDefault(id, List.of()).stream().map(ask -> new CaseFacts.Ask(ask.kind(), ask.words(), ask.askedBy(),
                            LocalDate.ofInstant(ask.askedAt(), clock.getZone()))).toList(),
                    Optional.ofNullable(planned.get(id)).map(PlannedVisits::visits).orElse(null)));
        });
        return facts;
    }

    private static List<CaseFacts.Contact> contacts(List<Visit> visits, LocalDate today) {
        return visits.stream().filter(visit -> !visit.visitedOn().isAfter(today))
                .filter(visit -> visit.attendance() == Attendance.ATTENDED || visit.attendance() == Attendance.MISSED)
                .map(visit -> new CaseFacts.Contact(visit.visitedOn(), visit.attendance() == Attendance.MISSED)).toList();
    }

    private Map<Long, List<WorkPlanStep>> stepsBack() {
        Map<Long, List<WorkPlanStep>> back = new LinkedHashMap<>();
        db.createQuery("select c.id, s from WorkPlanStep s join s.plan p join p.caseFile c where c.closedOn is null"
                + " and s.move = ?1 order by s.recordedAt, s.id", Object[].class).setParameter(1, NextStep.Move.BACK).getResultList()
                .forEach(row -> back.computeIfAbsent((Long) row[0], id -> new ArrayList<>()).add((WorkPlanStep) row[1]));
        return back;
    }

    private Map<Long, Long> given() {
        return db.createQuery("select p.caseFile.id, count(p) from Prescription p where p.endedOn is null and p.caseFile.closedOn is null group by p.caseFile.id",
                Object[].class).getResultList().stream().collect(Collectors.toMap(row -> (Long) row[0], row -> (Long) row[1]));
    }

    private <T> List<T> list(String query, Class<T> type) {
        return db.createQuery("select x " + query, type).getResultList();
    }

    private static <T> Map<Long, List<T>> by(Function<T, CaseFile> file, Collection<T> rows) {
        return rows.stream().collect(Collectors.groupingBy(row -> file.apply(row).id()));
    }
}
