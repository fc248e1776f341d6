package org.steadwork.workplace;

import java.math.BigDecimal;
import java.util.List;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;

/**
 * A value as it was taken.
 *
 * @param unit of {@code amount}, {@code standardError} and {@code readings}
 * @param standardError one standard deviation of the error, 0 or more; 0 when nothing is known about it
 * @param twice measured twice, because it was unlikely
 * @param readings the single readings, when it was read more than once; {@code amount} is their median
 */
public record Taken(BigDecimal amount, String unit, How how, BigDecimal standardError, boolean twice, List<BigDecimal> readings) {

    public Taken {
        readings = List.copyOf(readings);
    }

    /** Makes a value that was read once. */
    Taken(BigDecimal amount, String unit, How how, BigDecimal standardError, boolean twice) {
        this(amount, unit, how, standardError, twice, List.of());
    }

    /** Returns the same value as one that somebody told and nobody measured. */
    public Taken told() {
        return new Taken(amount, unit, How.TOLD, standardError, twice, readings);
    }

    Measurement measurement() {
        return new Measurement(amount.doubleValue(), how, standardError.doubleValue());
    }

    boolean same(Taken other) {
        return amount.compareTo(other.amount) == 0 && unit.equals(other.unit) && how == other.how
                && standardError.compareTo(other.standardError) == 0 && twice == other.twice && readings.equals(other.readings);
    }
}
