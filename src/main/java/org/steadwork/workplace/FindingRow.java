package org.steadwork.workplace;

import java.util.List;

/**
 * One row of the findings, ready to be shown.
 *
 * @param how how it was obtained, in a word or two
 * @param strip null when nothing was measured
 * @param by signed distance from the aim, or what was seen
 * @param error give or take with its sign, or null
 * @param state modifier of the status class
 * @param stage what became of it, or null when it is not a finding
 * @param href where that is recorded, or null
 */
record FindingRow(String id, String label, String detail, String how, BandStrip strip, String by, String error, String unit, String word,
        String state, List<Fact> working, String regions, String stage, String href) {

    /** One line of the working: what it is and its value. */
    record Fact(String name, String value) {
    }
}
