package org.steadwork.caseload;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Median and quartiles of whole numbers; the middle of two where two are in the middle (type 2 of Hyndman and Fan 1996, Am Stat 50:361). */
final class Quantiles {

    private final int[] sorted;

    private Quantiles(int[] sorted) {
        this.sorted = sorted;
    }

    static Quantiles of(IntStream values) {
        int[] sorted = values.toArray();
        Arrays.sort(sorted);
        return new Quantiles(sorted);
    }

    int count() {
        return sorted.length;
    }

    OptionalDouble median() {
        return at(0.5);
    }

    /** @param share in (0, 1) */
    OptionalDouble at(double share) {
        if (sorted.length == 0) {
            return OptionalDouble.empty();
        }
        double place = share * sorted.length;
        int index = (int) Math.ceil(place) - 1;
        boolean between = place == Math.rint(place) && index + 1 < sorted.length;
        return OptionalDouble.of(between ? (sorted[index] + sorted[index + 1]) / 2.0 : sorted[Math.max(0, index)]);
    }

    int least() {
        return sorted[0];
    }

    int most() {
        return sorted[sorted.length - 1];
    }
}
