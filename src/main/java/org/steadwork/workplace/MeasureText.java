package org.steadwork.workplace;

import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyMeasure;

/**
 * How a measure of the person is called and taken, from content.
 *
 * @param how landmark and position, in plain words
 * @param range what a living adult can have, in {@code unit}; outside it an entry is refused
 * @param giveOrTake half the 95 % interval of one careful reading, in {@code unit}
 */
record MeasureText(BodyMeasure measure, String label, String how, String unit, Band range, double giveOrTake, String source) {

    String key() {
        return FitContent.key(measure);
    }
}
