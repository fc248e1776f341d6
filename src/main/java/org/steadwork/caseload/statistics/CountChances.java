package org.steadwork.caseload.statistics;

import java.util.Arrays;

/**
 * Chances of the counts with both facts that the margins of a table allow, under a given odds ratio (Fisher's noncentral hypergeometric
 * distribution). Walked from the likeliest count to both sides by the ratio of neighbours until nothing is left that could be seen in a
 * double, so that a table of a hundred thousand people costs a few hundred steps. Counts outside have a chance of 0 here.
 *
 * <p>Source: Fisher 1935, J R Stat Soc 98:39; the recurrence as in Liao and Rosen 2001, Am Stat 55:366 (from memory).
 */
final class CountChances {

    private final int first;
    private final double[] chances;

    private CountChances(int first, double[] chances) {
        this.first = first;
        this.chances = chances;
    }

    /**
     * Walks the counts.
     *
     * @param least the smallest count the margins allow; {@code most} the greatest
     * @param finding people with the finding, {@code complaint} with the complaint, {@code neitherAtNone} people with neither when nobody has both
     * @param floor share of the likeliest chance below which the walk ends, above 0
     */
    static CountChances of(int least, int most, double finding, double complaint, double neitherAtNone, double odds, double floor) {
        int mode = mode(least, most, finding, complaint, neitherAtNone, odds);
        double[] up = walk(mode, most, 1, finding, complaint, neitherAtNone, odds, floor);
        double[] down = walk(mode, least, -1, finding, complaint, neitherAtNone, odds, floor);
        double[] all = new double[down.length + 1 + up.length];
        for (int i = 0; i < down.length; i++) {
            all[down.length - 1 - i] = down[i];
        }
        all[down.length] = 1;
        System.arraycopy(up, 0, all, down.length + 1, up.length);
        // smallest first, so that none is lost
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        double total = Arrays.stream(sorted).sum();
        return new CountChances(mode - down.length, Arrays.stream(all).map(chance -> chance / total).toArray());
    }

    /** The ratio of the chance of one more to that of a count. */
    private static double ratio(int count, double finding, double complaint, double neitherAtNone, double odds) {
        return (finding - count) * (complaint - count) / ((count + 1.0) * (neitherAtNone + count + 1)) * odds;
    }

    /** The ratio falls with the count, so the likeliest count is the first after which it is below 1. */
    private static int mode(int least, int most, double finding, double complaint, double neitherAtNone, double odds) {
        int low = least;
        int high = most;
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (ratio(middle, finding, complaint, neitherAtNone, odds) >= 1) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[] walk(int from, int end, int step, double finding, double complaint, double neitherAtNone, double odds, double floor) {
        double[] chances = new double[16];
        int n = 0;
        double chance = 1;
        for (int count = from; count != end; count += step) {
            chance = step > 0 ? chance * ratio(count, finding, complaint, neitherAtNone, odds)
                    : chance / ratio(count - 1, finding, complaint, neitherAtNone, odds);
            if (!(chance > floor)) {
                break;
            }
            if (n == chances.length) {
                chances = Arrays.copyOf(chances, 2 * n);
            }
            chances[n++] = chance;
        }
        return Arrays.copyOf(chances, n);
    }

    /** Returns the chance of a count, in [0, 1]. */
    double at(int count) {
        return count < first || count >= first + chances.length ? 0 : chances[count - first];
    }

    double atLeast(int count) {
        return sum(Math.max(0, count - first), chances.length);
    }

    double atMost(int count) {
        return sum(0, Math.min(chances.length, count - first + 1));
    }

    private double sum(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += chances[i];
        }
        return Math.min(1, sum);
    }

    /** Returns the chance of all counts whose own chance is at most so much. */
    double ofNoMoreThan(double chance) {
        double sum = 0;
        for (double one : chances) {
            sum += one <= chance ? one : 0;
        }
        return Math.min(1, sum);
    }

    double mean() {
        double mean = 0;
        for (int i = 0; i < chances.length; i++) {
            mean += chances[i] * (first + i);
        }
        return mean;
    }
}
