package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.web.Dates;

/** Open cases whose review is due or overdue, and open cases that have none set. */
@ApplicationScoped
class ReviewsDue implements Attention {

    private static final String NONE = "review_none";
    private static final String DUE = "review_due";
    private static final String OVERDUE = "review_overdue";

    @Inject
    EntityManager db;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(NONE, DUE, OVERDUE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return scope.bind(db.createQuery("select c from CaseFile c join fetch c.patient where " + scope.open("c")
                + " and (c.nextReviewOn is null or c.nextReviewOn <= :today)", CaseFile.class)).setParameter("today", today).getResultList().stream()
                .map(c -> entry(c, today)).toList();
    }

    private Entry entry(CaseFile file, LocalDate today) {
        LocalDate due = file.nextReviewOn();
        String href = CaseTab.VISITS.href(file.id());
        if (due == null) {
            return rules.rule(NONE).entry(file, "", file.openedOn(), href, Map.of());
        }
        long days = today.toEpochDay() - due.toEpochDay();
        // a review moved to another day is another review
        return days == 0 ? rules.rule(DUE).entry(file, due.toString(), due, href, Map.of())
                : rules.rule(OVERDUE).entry(file, due.toString(), due, href, Map.of("due", Dates.shown(due), "late", days + (days == 1 ? " day" : " days")));
    }
}
