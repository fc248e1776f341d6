package org.steadwork.casefile;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;

/** Tells at what time of day visits begin; the feature that books them is a bean of this type. A visit it does not know has none. */
public interface VisitTimes {

    /** Returns the times of a day's visits by the number of the visit, in one query. */
    Map<Long, LocalTime> on(LocalDate day);
}
