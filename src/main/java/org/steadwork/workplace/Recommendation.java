package org.steadwork.workplace;

import java.util.List;

/**
 * What to buy for a work place, for a reader who may know nothing of the person.
 *
 * @param forWhom    the role, never a name
 * @param estimates  what of this rests on an estimate, in words; empty when all was measured
 * @param settings   what to set once everything is there
 * @param drawing    the work place as it should stand, to scale, for a page; {@code drawingForPhone} for a telephone
 */
record Recommendation(long caseId, String place, String forWhom, String date, List<Line> lines, List<String> estimates, List<Setting> settings,
        List<String> left, String drawing, String drawingForPhone) {

    /**
     * One thing to get.
     *
     * @param needed false when it would only help
     * @param rests  what the numbers rest on
     */
    record Line(int number, String what, List<String> specs, List<String> whys, String evidence, boolean needed, String rests) {
    }

    /** One setting, for example "Seat height" at "455 mm". */
    record Setting(String part, String value) {
    }
}
