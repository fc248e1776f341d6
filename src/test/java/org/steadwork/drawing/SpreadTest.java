package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void labelsWithRoomStayWhereTheyAre() {
        assertArrayEquals(new double[] {50, 150}, Spread.middles(new double[] {50, 150}, new double[] {40, 40}, 0, 300, 10), 1e-9);
    }

    @Test
    void twoAtTheSamePlaceShareTheShift() {
        assertArrayEquals(new double[] {75, 125}, Spread.middles(new double[] {100, 100}, new double[] {40, 40}, 0, 300, 10), 1e-9);
    }

    @Test
    void noSmallMoveThatKeepsThemApartShiftsLess() {
        Random random = new Random(11);
        for (int round = 0; round < 200; round++) {
            int n = 2 + random.nextInt(6);
            double[] anchors = random.doubles(n, 200, 500).sorted().toArray();
            double[] heights = random.doubles(n, 20, 60).toArray();
            double[] best = Spread.middles(anchors, heights, 0, 5000, 8);
            assertApart(best, heights, 8);
            for (int tries = 0; tries < 50; tries++) {
                double[] other = best.clone();
                for (int i = 0; i < n; i++) {
                    other[i] += random.nextGaussian() * 3;
                }
                if (apart(other, heights, 8)) {
                    assertTrue(cost(best, anchors) <= cost(other, anchors) + 1e-6, Arrays.toString(anchors) + Arrays.toString(heights));
                }
            }
        }
    }

    private static double cost(double[] middles, double[] anchors) {
        double sum = 0;
        for (int i = 0; i < middles.length; i++) {
            sum += (middles[i] - anchors[i]) * (middles[i] - anchors[i]);
        }
        return sum;
    }

    private static void assertApart(double[] middles, double[] heights, double gap) {
        assertTrue(apart(middles, heights, gap - 1e-9), Arrays.toString(middles));
    }

    private static boolean apart(double[] middles, double[] heights, double gap) {
        for (int i = 1; i < middles.length; i++) {
            if (middles[i] - middles[i - 1] < (heights[i] + heights[i - 1]) / 2 + gap) {
                return false;
            }
        }
        return true;
    }
}
