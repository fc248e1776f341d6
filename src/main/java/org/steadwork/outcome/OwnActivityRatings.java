package org.steadwork.outcome;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseScope;

/** The own activities of the cases with their ratings. */
@ApplicationScoped
public class OwnActivityRatings implements PanacheRepository<OwnActivity> {

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** The activities of a case in the order in which they were named. */
    public List<OwnActivity> activities(long caseId) {
        return list("caseFile.id = ?1 order by namedOn, id", caseId);
    }

    /** All given ratings of the open cases of a scope, the earliest first. */
    List<ActivityRating> ratingsOfOpenCases(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from ActivityRating r join fetch r.activity a join fetch a.caseFile c where " + scope.open("c", "a.caseFile")
                + " and r.rating is not null order by r.ratedOn, a.namedOn, a.id", ActivityRating.class)).getResultList();
    }

    /** All given ratings of a case, the earliest first. */
    public List<ActivityRating> ratings(long caseId) {
        return getEntityManager().createQuery("from ActivityRating r join fetch r.activity a where a.caseFile.id = ?1 and r.rating is not null"
                + " order by r.ratedOn, a.namedOn, a.id", ActivityRating.class).setParameter(1, caseId).getResultList();
    }

    /** The given ratings of a case by day and by the id of the activity. */
    public Map<LocalDate, Map<Long, Integer>> byDay(long caseId) {
        Map<LocalDate, Map<Long, Integer>> rated = new TreeMap<>();
        for (ActivityRating rating : ratings(caseId)) {
            rated.computeIfAbsent(rating.ratedOn(), day -> new HashMap<>()).put(rating.activity().id(), rating.rating());
        }
        return rated;
    }

    /** Records a rating for a day; null takes back what was recorded for it and stores nothing new. */
    public void rate(OwnActivity activity, LocalDate day, Integer rating) {
        Optional<ActivityRating> stored = getEntityManager()
                .createQuery("from ActivityRating r where r.activity.id = ?1 and r.ratedOn = ?2", ActivityRating.class)
                .setParameter(1, activity.id()).setParameter(2, day).getResultStream().findFirst();
        if (stored.isPresent() ? Objects.equals(stored.get().rating(), rating) : rating == null) {
            return;
        }
        ActivityRating rated = stored.orElseGet(() -> new ActivityRating(activity, day));
        rated.rate(rating, account.displayName(), Instant.now(clock));
        getEntityManager().persist(rated);
    }
}
