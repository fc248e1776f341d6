package org.steadwork.workplace;

import org.steadwork.workplace.fit.Band;

/** How a reading at the work place is called, from content; {@code range} in mm, outside it an entry is refused. */
record StationText(StationMeasure measure, String group, String label, String unit, Band range) {

    String key() {
        return measure.key();
    }
}
