package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.Dates;

/** Visits that took place and have no signed note: a note is signed on the day or the day after. */
@ApplicationScoped
class UnsignedNotes implements Attention, CasePart {

    private static final String UNSIGNED = " where v.attendance = org.steadwork.casefile.Attendance.ATTENDED"
            + " and not exists (select n.id from VisitNote n where n.visit = v and n.signedAt is not null)";

    @Inject
    EntityManager db;

    @Override
    public List<Entry> entries(LocalDate today) {
        return db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient" + UNSIGNED
                + " and c.closedOn is null and v.visitedOn < ?1", Visit.class).setParameter(1, today).getResultList().stream()
                .map(UnsignedNotes::entry).toList();
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

    private static Entry entry(Visit visit) {
        return new Entry(visit.caseFile().id(), visit.caseFile().patient().name(), Urgency.SOON, "Unsigned", visit.visitedOn(),
                "The note of visit " + visit.number() + " of " + Dates.shown(visit.visitedOn()) + " is not signed.", "Sign the note",
                CaseTab.VISITS.href(visit.caseFile().id()) + "/" + visit.number());
    }
}
