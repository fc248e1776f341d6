package org.steadwork.outcome.scoring;

import java.util.Optional;

/**
 * One agreed goal, rated at the start and now.
 *
 * @param name what the goal is called where it is listed
 * @param weight 1 to 9: importance × difficulty, each from 1 to 3 (that range is common practice, no source), or 1
 * @param start −2 to 2, empty when not rated; {@code now} likewise
 * @param withdrawn why the goal was given up, blank while it stands: a withdrawn goal needs a reason
 */
public record RatedGoal(String name, int weight, Optional<Integer> start, Optional<Integer> now, String withdrawn) {

    private static final int MOST_WEIGHT = 9;

    public RatedGoal {
        withdrawn = withdrawn == null ? "" : withdrawn.strip();
        if (weight < 1 || weight > MOST_WEIGHT) {
            throw new IllegalArgumentException("A goal weighs 1 to 9, but \"" + name + "\" weighs " + weight);
        }
        check(name, start);
        check(name, now);
    }

    /** Returns the weight of a goal by its importance and its difficulty, each from 1 to 3. */
    public static int weight(int importance, int difficulty) {
        if (importance < 1 || importance > 3 || difficulty < 1 || difficulty > 3) {
            throw new IllegalArgumentException("Importance and difficulty go from 1 to 3, but are " + importance + " and " + difficulty);
        }
        return importance * difficulty;
    }

    boolean counts() {
        return withdrawn.isEmpty() && start.isPresent() && now.isPresent();
    }

    /** Says why the goal does not count, in words; blank when it does. */
    String leftOut() {
        if (!withdrawn.isEmpty()) {
            return "withdrawn: " + withdrawn;
        }
        return counts() ? "" : start.isEmpty() ? "not rated at the start" : "not rated now";
    }

    private static void check(String name, Optional<Integer> rating) {
        if (rating.isPresent() && (rating.get() < -2 || rating.get() > 2)) {
            throw new IllegalArgumentException("The goal \"" + name + "\" must be rated from \u22122 to 2, but is " + rating.get());
        }
    }
}
