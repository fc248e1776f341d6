package org.steadwork.drawing;

import java.util.Collection;
import java.util.List;
import org.steadwork.body.Mark;

/**
 * The marks of one report in a strip of small body charts.
 *
 * @param heading what it is, for example "Previous"
 * @param date    as shown to people
 */
public record ChartMoment(String heading, String date, Collection<Mark> marks) {
    public ChartMoment {
        marks = List.copyOf(marks);
    }
}
