package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Attention;

/** Counts what each clinician carries, in a fixed number of queries. */
@ApplicationScoped
class Team {

    private static final Set<String> UNSIGNED = Set.of("note_unsigned", "red_flag_screen_unsigned", "letter_unsigned", "letter_unsigned_at_once");
    private static final String OVERDUE = "review_overdue";

    @Inject
    EntityManager db;

    @Inject
    Accounts accounts;

    @Inject
    PageRefresh refresh;

    private record Figures(long now, long today, long soon, LocalDate oldest, long unsigned, long overdue) {
    }

    /** Brings the list up to date; returns whether that could be done. */
    boolean upToDate(LocalDate today) {
        return refresh.upToDate(today);
    }

    /** Returns a row for each clinician, and for whoever else has open cases. */
    List<TeamRow> on(LocalDate today) {
        Map<Long, Long> cases = counts("select c.clinician.id, count(c) from CaseFile c where c.closedOn is null group by c.clinician.id", Map.of());
        Map<Long, Long> snoozed = counts("select c.clinician.id, count(e) from WorklistEntry e join e.caseFile c where e.clearedOn is null and e.putOffUntil > :today group by c.clinician.id", Map.of("today", today));
        // each visit has a case; left, so that H2 begins with the visits of the week and not with all cases
        LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        Map<Long, Long> visits = counts("select c.clinician.id, count(v) from Visit v left join v.caseFile c where v.visitedOn between :monday and :sunday"
                + " and v.attendance <> :cancelled group by c.clinician.id", Map.of("monday", monday, "sunday", monday.plusDays(6), "cancelled", Attendance.CANCELLED));
        Map<Long, Figures> figures = figures(today);
        return accounts.all().stream().filter(account -> account.active() && account.role() != Role.ASSISTANT || cases.containsKey(account.id()))
                .map(account -> row(account, cases, figures, snoozed, visits)).toList();
    }

    private static TeamRow row(Account account, Map<Long, Long> cases, Map<Long, Figures> figures, Map<Long, Long> snoozed, Map<Long, Long> visits) {
        Figures of = figures.getOrDefault(account.id(), new Figures(0, 0, 0, null, 0, 0));
        return new TeamRow(account.id(), account.displayName(), account.active(), cases.getOrDefault(account.id(), 0L), of.now, of.today, of.soon, of.oldest,
                snoozed.getOrDefault(account.id(), 0L), of.unsigned, of.overdue, visits.getOrDefault(account.id(), 0L));
    }

    private Map<Long, Figures> figures(LocalDate today) {
        Map<Long, Figures> figures = new HashMap<>();
        db.createQuery("select c.clinician.id, sum(case when e.urgency = :now then 1 else 0 end), sum(case when e.urgency = :due then 1 else 0 end),"
                        + " sum(case when e.urgency = :soon then 1 else 0 end), min(e.since), sum(case when e.rule in :unsigned and e.since < :today then 1 else 0 end),"
                        + " sum(case when e.rule = :overdue then 1 else 0 end) from WorklistEntry e join e.caseFile c where e.clearedOn is null"
                        + " and (e.putOffUntil is null or e.putOffUntil <= :today) group by c.clinician.id", Object[].class).setParameter("now", Attention.Urgency.NOW).setParameter("due", Attention.Urgency.TODAY)
                .setParameter("soon", Attention.Urgency.SOON).setParameter("unsigned", UNSIGNED).setParameter("overdue", OVERDUE).setParameter("today", today).getResultList()
                .forEach(row -> figures.put((Long) row[0], new Figures(number(row[1]), number(row[2]), number(row[3]), (LocalDate) row[4], number(row[5]), number(row[6]))));
        return figures;
    }

    private Map<Long, Long> counts(String query, Map<String, Object> values) {
        var asked = db.createQuery(query, Object[].class);
        values.forEach(asked::setParameter);
        Map<Long, Long> counts = new HashMap<>();
        asked.getResultList().forEach(row -> counts.put((Long) row[0], (Long) row[1]));
        return counts;
    }

    private static long number(Object sum) {
        return ((Number) sum).longValue();
    }
}
