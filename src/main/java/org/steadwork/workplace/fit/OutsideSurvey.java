package org.steadwork.workplace.fit;

/** Says that a person lies outside the survey an equation was made from, so that nothing can be estimated. */
public final class OutsideSurvey extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    OutsideSurvey(String what, double value, String unit, Band range) {
        super("No estimate: " + what + " must be from " + number(range.low()) + " to " + number(range.high()) + " " + unit
                + ", but was " + number(value) + "; measure instead");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
