package org.steadwork.workplace.fit;

import java.util.Arrays;
import java.util.Map;

/**
 * How the errors of estimates go together at equal stature (and body mass): long legs go with a short trunk. No unit. Pairs
 * that were not worked out count as independent. What cannot stand together (not positive definite) is refused.
 */
public final class ErrorCorrelations {

    /** For people whose measures were all taken. */
    public static final ErrorCorrelations NONE = new ErrorCorrelations(Map.of());

    private final double[][] correlations;

    /** @param correlations by both dimensions, in either order; each in [−1, 1] */
    public ErrorCorrelations(Map<BodyDimension, Map<BodyDimension, Double>> correlations) {
        int size = BodyDimension.values().length;
        this.correlations = new double[size][size];
        for (int i = 0; i < size; i++) {
            this.correlations[i][i] = 1;
        }
        correlations.forEach((first, others) -> others.forEach((second, correlation) -> put(first, second, correlation)));
        Cholesky.of(this.correlations);
    }

    private void put(BodyDimension first, BodyDimension second, double correlation) {
        if (!(correlation >= -1 && correlation <= 1) || first == second && correlation != 1) {
            throw new IllegalArgumentException("The correlation of " + first + " and " + second + " must be from −1 to 1, but was " + correlation);
        }
        correlations[first.ordinal()][second.ordinal()] = correlation;
        correlations[second.ordinal()][first.ordinal()] = correlation;
    }

    /** Returns the correlation of two estimates' errors, 1 with itself, 0 when it was not worked out. */
    public double between(BodyDimension one, BodyDimension other) {
        return correlations[one.ordinal()][other.ordinal()];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ErrorCorrelations errors && Arrays.deepEquals(correlations, errors.correlations);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(correlations);
    }
}
