package org.steadwork.caseload.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Corrects the p values of many comparisons for having made many. */
public final class FalseDiscovery {

    private FalseDiscovery() {
    }

    /**
     * Returns the adjusted p values in the order given: calling all at or below q notable, a share q of those is expected to be chance.
     *
     * @param p each in [0, 1]; NaN or another value throws {@link IllegalArgumentException}
     * @return each in [its p, 1], not rounded
     * Source: Benjamini and Hochberg 1995, J R Stat Soc B 57:289; as R's {@code p.adjust(method = "BH")}.
     */
    public static double[] adjusted(double[] p) {
        for (double one : p) {
            if (!(one >= 0 && one <= 1)) {
                throw new IllegalArgumentException("A p value must lie between 0 and 1, but was " + one);
            }
        }
        int[] fallingOrder = IntStream.range(0, p.length).boxed().sorted(Comparator.comparingDouble(i -> -p[i])).mapToInt(i -> i).toArray();
        double[] adjusted = new double[p.length];
        double least = 1;
        for (int place = 0; place < p.length; place++) {
            int rank = p.length - place;
            least = Math.min(least, p[fallingOrder[place]] * p.length / rank);
            adjusted[fallingOrder[place]] = least;
        }
        return adjusted;
    }
}
