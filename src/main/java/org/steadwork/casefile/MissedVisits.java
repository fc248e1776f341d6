package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.web.Dates;

/** Missed visits that nobody has written about: the patient is phoned the same day, and the note says what came of it. */
@ApplicationScoped
class MissedVisits implements Attention {

    @Inject
    EntityManager db;

    @Override
    public List<Entry> entries(LocalDate today) {
        return db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient where c.closedOn is null"
                + " and v.attendance = org.steadwork.casefile.Attendance.MISSED"
                + " and not exists (select n.id from VisitNote n where n.visit = v and n.signedAt is not null)", Visit.class).getResultList().stream()
                .map(MissedVisits::entry).toList();
    }

    private static Entry entry(Visit visit) {
        return new Entry(visit.caseFile().id(), visit.caseFile().patient().name(), Attention.Urgency.TODAY, "Missed visit", visit.visitedOn(),
                "Visit " + visit.number() + " of " + Dates.shown(visit.visitedOn()) + " was missed. How things are since is unknown.",
                "Phone and write the note", CaseTab.VISITS.href(visit.caseFile().id()) + "/" + visit.number()).marked("near");
    }
}
