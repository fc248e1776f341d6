package org.steadwork.casemap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AmountsTest {

    /** Source: the rules of this project for shown numbers: a true minus, no space before a degree sign, one before other units. */
    @Test
    void anAmountHasItsSignAndItsUnit() {
        assertEquals("+10°", Amounts.signed(10, "°"));
        assertEquals("\u22124.5°", Amounts.signed(-4.5, "°"));
        assertEquals("\u2212150\u00a0mm", Amounts.signed(-150, "mm"));
        assertEquals("0\u00a0mm", Amounts.signed(0.04, "mm"));
        assertEquals("7.5\u00a0h", Amounts.hours(7.5));
    }
}
