package org.steadwork.exposure.method;

/** The range checks of the methods' inputs; not-a-number fails each of them. */
final class Checks {

    private Checks() {
    }

    static double within(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " must be from " + plain(least) + " to " + plain(most) + (unit.isEmpty() ? "" : " " + unit)
                    + ", but was " + plain(value));
        }
        return value;
    }

    static int within(String what, int value, int least, int most) {
        within(what, (double) value, least, most, "");
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? String.valueOf((long) value) : String.valueOf(value);
    }
}
