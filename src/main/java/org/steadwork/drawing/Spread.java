package org.steadwork.drawing;

import java.util.Arrays;

/**
 * Moves labels apart: no overlap, order kept, the sum of squared shifts least (pool adjacent violators), within the page
 * where there is room. Kept order means that leaders seldom cross.
 */
public final class Spread {

    private Spread() {
    }

    /**
     * @param anchors where each label wants its middle, ascending
     * @param heights the height of each label
     * @return the middles, in the same order
     */
    public static double[] middles(double[] anchors, double[] heights, double low, double high, double gap) {
        int n = anchors.length;
        double[] offset = new double[n];
        double total = 0;
        double[] mean = new double[n];
        int[] size = new int[n];
        int blocks = 0;
        for (int i = 0; i < n; i++) {
            offset[i] = total + heights[i] / 2;
            total += heights[i] + gap;
            mean[blocks] = anchors[i] - offset[i];
            size[blocks++] = 1;
            while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
                blocks--;
                int both = size[blocks - 1] + size[blocks];
                mean[blocks - 1] = (mean[blocks - 1] * size[blocks - 1] + mean[blocks] * size[blocks]) / both;
                size[blocks - 1] = both;
            }
        }
        double lastStart = Math.max(low, high - (total - gap));
        double[] middles = new double[n];
        int next = 0;
        for (int b = 0; b < blocks; b++) {
            double start = Math.min(Math.max(mean[b], low), lastStart);
            Arrays.fill(middles, next, next + size[b], start);
            next += size[b];
        }
        for (int i = 0; i < n; i++) {
            middles[i] += offset[i];
        }
        return middles;
    }
}
