package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.web.Dates;

/** Missed visits that nobody has written about: the patient is phoned the same day, and the note says what came of it. */
@ApplicationScoped
class MissedVisits implements Attention {

    private static final String RULE = "missed_visit";

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
        return scope.bind(db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient where " + scope.open("c")
                + " and v.attendance = org.steadwork.casefile.Attendance.MISSED"
                + " and not exists (select n.id from VisitNote n where n.visit = v and n.signedAt is not null)", Visit.class)).getResultList().stream()
                .map(this::entry).toList();
    }

    private Entry entry(Visit visit) {
        return rules.rule(RULE).entry(visit.caseFile(), String.valueOf(visit.number()), visit.visitedOn(),
                CaseTab.VISITS.href(visit.caseFile().id()) + "/" + visit.number(),
                Map.of("visit", String.valueOf(visit.number()), "day", Dates.shown(visit.visitedOn())));
    }
}
