package org.steadwork.workplace;

import org.steadwork.workplace.fit.Band;

/**
 * A size that the register keeps of a desk or a chair, from content; in mm.
 *
 * @param fills the field of an assessment that starts from it, or null
 * @param range outside it an entry is refused
 */
record RegisterSize(String key, FurnitureKind kind, String label, String fills, Band range) {

    private static final String LOW = "_low";
    private static final String HIGH = "_high";

    /** Returns the key of the other end when this is the lower end of a range, else null. */
    String upperEnd() {
        return key.endsWith(LOW) ? key.substring(0, key.length() - LOW.length()) + HIGH : null;
    }

    /** Returns the field of today's setting, when this is the lower end of a range that fills one; else null. */
    String settingField() {
        return fills != null && fills.endsWith(LOW) ? fills.substring(0, fills.length() - LOW.length()) + "_now" : null;
    }
}
