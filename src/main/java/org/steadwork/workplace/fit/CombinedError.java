package org.steadwork.workplace.fit;

/** The error of a sum of two estimates that go wrong together: long legs go with a short trunk, so a sum is surer than its parts. */
public final class CombinedError {

    private CombinedError() {
    }

    /**
     * Returns the standard error of a sum, in the unit of the parts: √(a² + b² + 2rab).
     *
     * @param a standard error of the one part, 0 or more
     * @param b standard error of the other, 0 or more
     * @param correlation of the two errors, in [−1, 1]
     */
    public static double ofSum(double a, double b, double correlation) {
        if (!(a >= 0 && b >= 0 && correlation >= -1 && correlation <= 1)) {
            throw new IllegalArgumentException("Errors must be 0 or more and their correlation from −1 to 1, but were " + a + ", " + b
                    + " and " + correlation);
        }
        return Math.sqrt(Math.max(0, a * a + b * b + 2 * correlation * a * b));
    }
}
