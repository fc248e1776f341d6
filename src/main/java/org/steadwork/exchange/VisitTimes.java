package org.steadwork.exchange;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.Visit;

/**
 * When a planned visit begins and how long it lasts. Whatever books visits by the hour is one bean of this type; without one, or for a visit it
 * does not know, a calendar shows the day alone.
 */
public interface VisitTimes {

    /** @param minutes above 0 */
    record Span(LocalTime from, int minutes) {
    }

    /** Returns the times of those visits that have one, by their id, in one query. */
    Map<Long, Span> of(List<Visit> visits);
}
