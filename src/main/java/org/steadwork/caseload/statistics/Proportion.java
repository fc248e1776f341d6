package org.steadwork.caseload.statistics;

/**
 * How many of a group, with limits that hold for groups of a clinic's size.
 *
 * @param count those counted, in [0, of]; outside it {@link IllegalArgumentException}
 * @param of size of the group, at least 1
 */
public record Proportion(int count, int of) {

    public Proportion {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException("A proportion needs a group of at least one and a count within it, but was " + count + " of " + of);
        }
    }

    /** Returns the share, in [0, 1], not rounded. */
    public double value() {
        return (double) count / of;
    }

    /**
     * Returns Wilson's limits of the share, each in [0, 1].
     *
     * @param confidence in (0, 1), usually 0.95
     * Source: Wilson 1927, J Am Stat Assoc 22:209; method 3 of Newcombe 1998, Stat Med 17:857.
     */
    public Limits wilson(double confidence) {
        double z = Confidence.standardErrors(confidence);
        double scale = 1 + z * z / of;
        double centre = (value() + z * z / (2 * of)) / scale;
        double half = z * Math.sqrt(value() * (1 - value()) / of + z * z / (4.0 * of * of)) / scale;
        return within(centre - half, centre + half);
    }

    /**
     * Returns Wilson's limits with a correction for continuity, which are wider: never narrower than the confidence promises.
     *
     * @param confidence in (0, 1), usually 0.95
     * Source: method 4 of Newcombe 1998, Stat Med 17:857.
     */
    public Limits wilsonCorrected(double confidence) {
        double z = Confidence.standardErrors(confidence);
        double p = value();
        double scale = 2 * (of + z * z);
        double low = (2 * count + z * z - 1 - z * Math.sqrt(z * z - 2 - 1.0 / of + 4 * p * (of * (1 - p) + 1))) / scale;
        double high = (2 * count + z * z + 1 + z * Math.sqrt(z * z + 2 - 1.0 / of + 4 * p * (of * (1 - p) - 1))) / scale;
        return within(low, high);
    }

    /**
     * Returns the limits of this share less another's, of two separate groups; each in [−1, 1]. A description: groups that were not
     * drawn by lot differ in more than what they are named for.
     *
     * @param confidence in (0, 1), usually 0.95
     * Source: method 10 of Newcombe 1998, Stat Med 17:873.
     */
    public Limits less(Proportion other, double confidence) {
        Limits mine = wilson(confidence);
        Limits theirs = other.wilson(confidence);
        double difference = value() - other.value();
        return new Limits(difference - Math.hypot(value() - mine.low(), theirs.high() - other.value()),
                difference + Math.hypot(mine.high() - value(), other.value() - theirs.low()));
    }

    // the formula gives 1e-17 where it means 0
    private Limits within(double low, double high) {
        return new Limits(count == 0 ? 0 : Math.max(0, low), count == of ? 1 : Math.min(1, high));
    }
}
