package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.web.Dates;

/** Visits that took place and have no signed note: a note is signed on the day or the day after. */
@ApplicationScoped
class UnsignedNotes implements Attention, CasePart {

    private static final String RULE = "note_unsigned";
    private static final String UNSIGNED = " where v.attendance = org.steadwork.casefile.Attendance.ATTENDED"
            + " and not exists (select n.id from VisitNote n where n.visit = v and n.signedAt is not null)";

    @Inject
    EntityManager db;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return scope.bind(db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient" + UNSIGNED
                + " and " + scope.open("c", "v.caseFile") + " and v.visitedOn <= :latest", Visit.class))
                .setParameter("latest", today.minusDays(rules.rule(RULE).setting("days"))).getResultList().stream().map(this::entry).toList();
    }

    @Override
    public Optional<String> mark(CaseTab tab, CaseFile file) {
        if (tab != CaseTab.VISITS) {
            return Optional.empty();
        }
        long count = db.createQuery("select count(v) from Visit v" + UNSIGNED + " and v.caseFile.id = ?1", Long.class)
                .setParameter(1, file.id()).getSingleResult();
        return count == 0 ? Optional.empty() : Optional.of(count + " unsigned");
    }

    private Entry entry(Visit visit) {
        return rules.rule(RULE).entry(visit.caseFile(), String.valueOf(visit.number()), visit.visitedOn(),
                CaseTab.VISITS.href(visit.caseFile().id()) + "/" + visit.number(),
                Map.of("visit", String.valueOf(visit.number()), "day", Dates.shown(visit.visitedOn())));
    }
}
