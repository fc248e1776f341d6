package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.web.Dates;

/** Open cases whose review is due or overdue, and open cases that have none set. */
@ApplicationScoped
class ReviewsDue implements Attention {

    @Inject
    EntityManager db;

    @Override
    public List<Entry> entries(LocalDate today) {
        return db.createQuery("select c from CaseFile c join fetch c.patient where c.closedOn is null"
                + " and (c.nextReviewOn is null or c.nextReviewOn <= ?1)", CaseFile.class).setParameter(1, today).getResultList().stream()
                .map(c -> entry(c, today)).toList();
    }

    private static Entry entry(CaseFile file, LocalDate today) {
        LocalDate due = file.nextReviewOn();
        String href = CaseTab.VISITS.href(file.id());
        if (due == null) {
            return new Entry(file.id(), file.patient().name(), Urgency.SOON, "No review set", file.openedOn(), "No next review is set.", "Set the next review", href);
        }
        if (due.isEqual(today)) {
            return new Entry(file.id(), file.patient().name(), Urgency.TODAY, "Review due", due, "The next review is set for today.", "Open the visit", href);
        }
        long days = today.toEpochDay() - due.toEpochDay();
        return new Entry(file.id(), file.patient().name(), Urgency.TODAY, "Overdue", due, "Review was due on " + Dates.shown(due) + ", " + days
                + (days == 1 ? " day ago." : " days ago."), "Hold or move the review", href).marked("near");
    }
}
