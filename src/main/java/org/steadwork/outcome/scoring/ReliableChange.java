package org.steadwork.outcome.scoring;

import java.util.Optional;

/**
 * Reliable change: how a change compares with the measurement error of a scale. It ignores regression to the mean and takes
 * one error for the whole scale.
 *
 * @param standardError of measurement, in points of the scale, above 0
 * Source: Jacobson and Truax 1991.
 */
public record ReliableChange(double standardError) {

    private static final double Z_90 = 1.645;
    private static final double Z_95 = 1.96;

    public ReliableChange {
        if (!(standardError > 0 && standardError < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The standard error must be above 0, but is " + standardError);
        }
    }

    /** Makes it of a standard deviation and a test-retest reliability in [0, 1): SEM = SD × √(1 − reliability). */
    public static ReliableChange of(double standardDeviation, double reliability) {
        if (!(reliability >= 0 && reliability < 1)) {
            throw new IllegalArgumentException("A reliability lies between 0 and 1, but is " + reliability);
        }
        return new ReliableChange(standardDeviation * Math.sqrt(1 - reliability));
    }

    /** Returns the error behind a published amount that says how it was made (90 or 95 % limit); empty for any other. */
    public static Optional<ReliableChange> behind(Threshold error) {
        if (error.kind() != Threshold.Kind.ERROR || error.unit() != Threshold.Unit.POINTS) {
            return Optional.empty();
        }
        return switch (error.level()) {
            case "MDC90" -> Optional.of(new ReliableChange(error.value() / (Z_90 * Math.sqrt(2))));
            case "MDC95", "SDC95" -> Optional.of(new ReliableChange(error.value() / (Z_95 * Math.sqrt(2))));
            default -> Optional.empty();
        };
    }

    /** Returns the standard error of a difference of two scores. */
    public double differenceError() {
        return Math.sqrt(2) * standardError;
    }

    /** Returns the reliable change index (later − earlier) ÷ error of a difference; beyond ±1.96 it is unlikely to be error. */
    public double index(double earlier, double later) {
        return (later - earlier) / differenceError();
    }

    public double mdc90() {
        return Z_90 * differenceError();
    }

    public double mdc95() {
        return Z_95 * differenceError();
    }
}
