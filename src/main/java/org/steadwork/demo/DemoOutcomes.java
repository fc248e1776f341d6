package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import org.steadwork.content.Entry;
import org.steadwork.outcome.ActivityRating;
import org.steadwork.outcome.Goal;
import org.steadwork.outcome.GoalRating;
import org.steadwork.outcome.GoalState;
import org.steadwork.outcome.Goals;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.OwnActivity;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;

/** The scores of each visit, the activities the patient named, and the goals. */
@ApplicationScoped
class DemoOutcomes implements DemoVisitPart {

    private static final List<String> RATINGS = List.of("now", "average", "worst");

    @Inject
    Instruments instruments;

    @Inject
    OwnActivityRatings activities;

    @Inject
    Goals goals;

    @Inject
    EntityManager db;

    @Override
    public int order() {
        return 50;
    }

    @Override
    public void load(DemoVisit visit) {
        if (visit.visit().number() == 1) {
            for (Entry goal : visit.described().entries("goals")) {
                db.persist(new OwnActivity(visit.file(), goal.text("activity"), visit.day()));
                Goal set = new Goal(visit.file(), goal.text("activity"), visit.day());
                set.scale(goal.optionalText("expected").orElse(null), weight(goal, "importance"), weight(goal, "difficulty"), null);
                db.persist(set);
            }
        }
        for (Entry scored : visit.entry().entries("scores")) {
            switch (scored.text("instrument")) {
                case "nprs" -> RATINGS.forEach(rating -> score(visit, scored, "nprs_" + rating, List.of(scored.integer(rating))));
                case "psfs" -> rate(visit, answers(scored));
                default -> score(visit, scored, scored.text("instrument"), answers(scored));
            }
        }
        for (Entry rated : visit.entry().entries("goal_ratings")) {
            Goal goal = goals.of(visit.file().id()).stream().filter(one -> one.words().equals(rated.text("goal"))).findFirst()
                    .orElseThrow(() -> rated.problem("no such goal: " + rated.text("goal")));
            GoalRating rating = new GoalRating(goal, visit.day());
            rating.rate(rated.integer("attained"), visit.clinician().displayName(), visit.moment());
            db.persist(rating);
        }
        List<String> met = visit.entry().texts("goals_met");
        goals.of(visit.file().id()).stream().filter(goal -> met.contains(goal.words()))
                .forEach(goal -> goal.review(GoalState.MET, null, visit.day()));
    }

    private void score(DemoVisit visit, Entry scored, String key, List<Integer> answers) {
        Instrument instrument = instruments.find(key).orElseThrow(() -> scored.problem("no such instrument: " + key));
        Score score = new Score(visit.file(), instrument, visit.day());
        score.record(instrument, answers, visit.clinician().displayName(), visit.moment());
        db.persist(score);
    }

    private void rate(DemoVisit visit, List<Integer> ratings) {
        List<OwnActivity> named = activities.activities(visit.file().id());
        for (int i = 0; i < ratings.size(); i++) {
            ActivityRating rating = new ActivityRating(named.get(i), visit.day());
            rating.rate(ratings.get(i), visit.clinician().displayName(), visit.moment());
            db.persist(rating);
        }
    }

    private static Integer weight(Entry goal, String name) {
        return goal.has(name) ? goal.integer(name) : null;
    }

    private static List<Integer> answers(Entry scored) {
        return scored.texts("items").stream().map(Integer::valueOf).toList();
    }
}
