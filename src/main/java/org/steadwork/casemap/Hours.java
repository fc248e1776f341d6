package org.steadwork.casemap;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Hours as the map shows them: at most one decimal. */
final class Hours {

    private Hours() {
    }

    static String shown(double hours) {
        BigDecimal rounded = BigDecimal.valueOf(hours).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString() + " h";
    }
}
