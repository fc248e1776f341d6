package org.steadwork.outcome;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseScope;

/** The goals of the cases with their ratings. */
@ApplicationScoped
public class Goals implements PanacheRepository<Goal> {

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** The goals of a case in the order in which they were set. */
    public List<Goal> of(long caseId) {
        return list("caseFile.id = ?1 order by setOn, id", caseId);
    }

    /** The goals of the open cases of a scope. */
    List<Goal> ofOpenCases(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from Goal g join fetch g.caseFile c where " + scope.open("c", "g.caseFile"), Goal.class)).getResultList();
    }

    /** All given ratings of a case, the earliest first. */
    public List<GoalRating> ratings(long caseId) {
        return getEntityManager().createQuery("from GoalRating r join fetch r.goal g where g.caseFile.id = ?1 and r.attained is not null"
                + " order by r.ratedOn, g.id", GoalRating.class).setParameter(1, caseId).getResultList();
    }

    /** Records a rating for a day; null takes back what was recorded for it and stores nothing new. */
    void rate(Goal goal, LocalDate day, Integer attained) {
        Optional<GoalRating> stored = getEntityManager().createQuery("from GoalRating r where r.goal.id = ?1 and r.ratedOn = ?2", GoalRating.class)
                .setParameter(1, goal.id()).setParameter(2, day).getResultStream().findFirst();
        if (stored.isPresent() ? Objects.equals(stored.get().attained(), attained) : attained == null) {
            return;
        }
        GoalRating rating = stored.orElseGet(() -> new GoalRating(goal, day));
        rating.rate(attained, account.displayName(), Instant.now(clock));
        getEntityManager().persist(rating);
    }
}
