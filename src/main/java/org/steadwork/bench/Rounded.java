package org.steadwork.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are shown: rounded half up, with a true minus. */
public final class Rounded {

    private Rounded() {
    }

    /** Writes a finite number with exactly {@code decimals} decimals. */
    public static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString().replace('-', '−');
    }

    /** Writes a finite number with at most {@code decimals} decimals. */
    public static String to(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString().replace('-', '−');
    }
}
