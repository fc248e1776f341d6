package org.steadwork.drawing.desk;

/**
 * The range a value should lie in, and the wider range in which it is only a little off.
 * All four in millimetres or degrees, in the order {@code cautionFrom <= from <= to <= cautionTo}; infinite ends are allowed.
 */
public record Band(double from, double to, double cautionFrom, double cautionTo) {

    public Band {
        if (!(cautionFrom <= from && from <= to && to <= cautionTo)) {
            throw new IllegalArgumentException("A band goes from caution to target to target to caution, but was "
                    + cautionFrom + ", " + from + ", " + to + ", " + cautionTo);
        }
    }

    State judge(double value) {
        if (value >= from && value <= to) {
            return State.IN_RANGE;
        }
        return value >= cautionFrom && value <= cautionTo ? State.A_LITTLE_OFF : State.OUT_OF_RANGE;
    }
}
