package org.steadwork.outcome.scoring;

/**
 * A named stretch of a scale. It describes a single score and is no threshold of change.
 *
 * @param highest the highest score of the band, included; infinity for the last one
 */
public record Band(double highest, String label, String source) {
}
