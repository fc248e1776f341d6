package org.steadwork.casefile;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;

/**
 * What was said about one zone. Every scale is a whole number in [0, 10], or null when not asked; null is never 0.
 * A number outside throws {@link IllegalArgumentException}.
 *
 * @param zone       key of a zone of the body chart
 * @param now        pain at the time of asking
 * @param worst      worst pain of the last seven days
 * @param average    average pain of the last seven days
 * @param atWork     pain at work in the last seven days
 * @param limitsWork how much it limits work, 0 not at all, 10 no work possible
 * @param kinds      kinds of symptom, empty when not said
 * @param since      since when, as a date on screen or in words; null when not noted
 * @param pattern    how it behaves, in words; null when not noted
 */
public record RegionReading(String zone, Integer now, Integer worst, Integer average, Integer atWork, Integer limitsWork,
        Set<SymptomKind> kinds, String since, String pattern) {

    public RegionReading {
        Objects.requireNonNull(zone, "zone");
        for (Integer score : new Integer[] {now, worst, average, atWork, limitsWork}) {
            if (score != null && !(score >= 0 && score <= 10)) {
                throw new IllegalArgumentException("A score is a whole number from 0 to 10, but was " + score);
            }
        }
        Set<SymptomKind> sorted = EnumSet.noneOf(SymptomKind.class);
        sorted.addAll(kinds);
        kinds = Collections.unmodifiableSet(sorted);
    }

    /** Returns the mark of the body chart: pain now, and kinds. */
    public Mark mark() {
        return new Mark(zone, now, kinds);
    }

    /** Returns the zone, its kinds and its history as the start of a later report; scores must be asked anew. */
    public RegionReading askedAnew() {
        return new RegionReading(zone, null, null, null, null, null, kinds, since, pattern);
    }
}
