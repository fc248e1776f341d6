package org.steadwork.casefile;

import org.steadwork.drawing.Trend;

/**
 * A measure on the map: its trend and what the change means.
 *
 * @param main    the measure of the main complaint; one of a case
 * @param name    e.g. "Neck disability"
 * @param change  the change since the first score as shown, e.g. "−22"; null while there are fewer than two scores
 * @param words   the verdict, e.g. "Important change, better"
 * @param basis   both numbers that stand behind the verdict
 * @param now     the last score as shown, e.g. "1"; null when there is none
 * @param was     what stands beside it, e.g. "of 10, was 6"
 */
public record MapMeasure(boolean main, String name, String change, String words, String basis, String now, String was, Trend trend,
        String href) {
}
