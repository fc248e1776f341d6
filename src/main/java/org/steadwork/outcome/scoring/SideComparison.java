package org.steadwork.outcome.scoring;

import java.util.OptionalDouble;

/**
 * One side beside the other, in the unit of both.
 *
 * @param deficit other − this: how much this side falls short, negative when it is the better one
 * @param percentOfOther this ÷ other × 100, not rounded; empty when the other side is 0
 */
public record SideComparison(double deficit, OptionalDouble percentOfOther) {

    /** Compares two values of at least 0; anything else, NaN too, is refused. */
    public static SideComparison of(double side, double other) {
        if (!(side >= 0 && side < Double.POSITIVE_INFINITY) || !(other >= 0 && other < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("Two sides are compared by values from 0 up, but these are " + side + " and " + other);
        }
        return new SideComparison(other - side, other == 0 ? OptionalDouble.empty() : OptionalDouble.of(side / other * 100));
    }
}
