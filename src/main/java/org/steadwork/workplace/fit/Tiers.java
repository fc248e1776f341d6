package org.steadwork.workplace.fit;

import java.util.Arrays;

/** The tiers of {@link Objective} that depend on seat, footrest and desk, of what is tried and of the best so far; no allocation. */
final class Tiers {

    static final int CONTACT = 0;
    static final int MISSING = 1;
    static final int FEET = 2;
    static final int ELBOW = 3;
    static final int EYE = 4;
    static final int FEET_SQUARED = 5;
    static final int ELBOW_SQUARED = 6;
    static final int EYE_SQUARED = 7;
    static final int FOOTREST_USED = 8;
    static final int CHANGE = 9;
    static final int FOOTREST_HEIGHT = 10;

    private static final double HAIR = 1e-9;
    private static final int COUNT = 11;

    private final double[] tried = new double[COUNT];
    private final double[] least = new double[COUNT];
    private boolean bestIsAtEveryAim;
    /** The tiers before this one are level with the best; whether this one is ahead of it. */
    private int compared;
    private boolean ahead;

    void clear() {
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        bestIsAtEveryAim = false;
        compared = 0;
        ahead = false;
    }

    void put(int tier, double value) {
        tried[tier] = value;
        if (tier <= compared) {
            compared = tier;
            ahead = false;
        }
    }

    double least(int tier) {
        return least[tier];
    }

    /** Tells whether a tier of the best cannot be bettered. */
    boolean isNought(int tier) {
        return least[tier] <= HAIR;
    }

    /** Tells whether the best is as good as can be in every tier up to this one. */
    boolean isNoughtUpTo(int lastTier) {
        for (int tier = 0; tier <= lastTier; tier++) {
            if (!isNought(tier)) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether nothing but the footrest and the changes from today can be bettered. */
    boolean bestIsAtEveryAim() {
        return bestIsAtEveryAim;
    }

    /** Compares what is tried with the best so far, tier by tier up to the last one that is known. */
    boolean behindBy(int lastTier) {
        while (!ahead && compared <= lastTier) {
            double difference = tried[compared] - least[compared];
            if (difference > HAIR) {
                return true;
            }
            ahead = difference < -HAIR;
            compared += ahead ? 0 : 1;
        }
        return false;
    }

    /** Tells whether what is tried, every tier of it known, is better than the best so far. */
    boolean ahead() {
        return !behindBy(FOOTREST_HEIGHT) && ahead;
    }

    void keep() {
        System.arraycopy(tried, 0, least, 0, COUNT);
        bestIsAtEveryAim = isNoughtUpTo(EYE_SQUARED);
        compared = COUNT;
        ahead = false;
    }

    /** Tells whether a footrest and a change from today are no better than those of the best, by the tiers that come last. */
    boolean noLessInUse(double rest, double leastChange) {
        double used = rest > 0 ? 1 : 0;
        return used > least[FOOTREST_USED]
                || used == least[FOOTREST_USED] && leastChange >= least[CHANGE] - HAIR && rest >= least[FOOTREST_HEIGHT];
    }
}
