package org.steadwork.casefile;

import java.util.List;

/**
 * What a feature lays on the map of a case: cards and measures. Each feature that has something to lay is one bean of this
 * type, so that the map need not know the features. Each method costs a fixed number of queries.
 */
public interface MapPart {

    /** The cards in the order they matter; a key stands at most once on the map. */
    default List<MapCard> cards(CaseFile caseFile) {
        return List.of();
    }

    default List<MapMeasure> measures(CaseFile caseFile) {
        return List.of();
    }
}
