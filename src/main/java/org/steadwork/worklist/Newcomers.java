package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.people.Patient;

/**
 * People who were registered and have neither a case nor a visit to come, so that nobody is lost between the desk and the first visit.
 * They have no case, so no entry of a case can stand for them: Today shows them in a list of their own, to the front desk too.
 */
@ApplicationScoped
class Newcomers implements Attention {

    private static final String RULE = "newcomer";
    private static final int SHOWN = 20;

    /**
     * Somebody registered.
     *
     * @param missedOn day of the latest missed visit, or null
     * @param waiting  true when they stand on the waiting list of the diary
     */
    record Newcomer(Patient patient, LocalDate missedOn, boolean waiting) {
    }

    /** Those shown, the longest registered first, and how many there are in all. */
    record Shown(long count, List<Newcomer> rows, AttentionRule rule) {
    }

    @Inject
    EntityManager db;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    /** None: the rule is about people without a case. */
    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return List.of();
    }

    /** At most two queries. */
    Shown on(LocalDate today) {
        AttentionRule rule = rules.rule(RULE);
        String who = " from Patient p where p.registeredOn between :from and :to and not exists (select 1 from CaseFile c where c.patient = p)"
                + " and not exists (select 1 from Appointment a where a.patient = p and a.live = true and a.day >= :today and a.firstAttendance = :planned)";
        long count = bound(db.createQuery("select count(p)" + who, Long.class), rule, today).getSingleResult();
        List<Newcomer> rows = count == 0 ? List.of() : bound(db.createQuery("select p, (select max(m.day) from Appointment m where m.patient = p and m.firstAttendance = :missed),"
                + " (select count(w) from WaitingEntry w where w.patient = p and w.endedAt is null)" + who + " order by p.registeredOn, p.id", Object[].class), rule, today)
                .setParameter("missed", Attendance.MISSED).setMaxResults(SHOWN).getResultStream()
                .map(row -> new Newcomer((Patient) row[0], (LocalDate) row[1], (Long) row[2] > 0)).toList();
        return new Shown(count, rows, rule);
    }

    private static <T> TypedQuery<T> bound(TypedQuery<T> query, AttentionRule rule, LocalDate today) {
        return query.setParameter("from", today.minusDays(rule.setting("until"))).setParameter("to", today.minusDays(rule.setting("days"))).setParameter("today", today)
                .setParameter("planned", Attendance.PLANNED);
    }
}
