package org.steadwork.workplace;

import java.math.BigDecimal;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;

/**
 * A value as it was taken.
 *
 * @param unit of {@code amount} and {@code standardError}
 * @param standardError one standard deviation of the error, 0 or more; 0 when nothing is known about it
 * @param twice measured twice, because it was unlikely
 */
public record Taken(BigDecimal amount, String unit, How how, BigDecimal standardError, boolean twice) {

    Measurement measurement() {
        return new Measurement(amount.doubleValue(), how, standardError.doubleValue());
    }

    boolean same(Taken other) {
        return amount.compareTo(other.amount) == 0 && unit.equals(other.unit) && how == other.how
                && standardError.compareTo(other.standardError) == 0 && twice == other.twice;
    }
}
