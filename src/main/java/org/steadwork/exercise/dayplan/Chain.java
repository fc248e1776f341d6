package org.steadwork.exercise.dayplan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Chooses, from places in order, those with the least cost, where a choice costs only for each pair of neighbours chosen.
 * Costs are compared part by part, the first that differs decides; they add up, so the choice is the best of all.
 */
final class Chain {

    /** Cost of going straight from one place to the next chosen; -1 stands for the start, {@code count} for the end; null forbids it. */
    interface Cost {

        long[] between(int before, int after);
    }

    private Chain() {
    }

    /** @param needed places that cannot be left out */
    static List<Integer> cheapest(int count, IntPredicate needed, Cost cost) {
        long[][] best = new long[count + 1][];
        int[] from = new int[count + 1];
        for (int place = 0; place <= count; place++) {
            for (int before = place - 1; before >= -1; before--) {
                long[] step = before >= 0 && best[before] == null ? null : cost.between(before, place);
                if (step != null) {
                    long[] total = before < 0 ? step : sum(best[before], step);
                    if (best[place] == null || Arrays.compare(total, best[place]) < 0) {
                        best[place] = total;
                        from[place] = before;
                    }
                }
                if (before >= 0 && needed.test(before)) {
                    break;
                }
            }
        }
        List<Integer> chosen = new ArrayList<>();
        for (int place = from[count]; place >= 0; place = from[place]) {
            chosen.add(place);
        }
        Collections.reverse(chosen);
        return chosen;
    }

    private static long[] sum(long[] a, long[] b) {
        long[] sum = a.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }
}
