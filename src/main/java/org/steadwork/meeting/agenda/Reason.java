package org.steadwork.meeting.agenda;

import java.util.List;

/**
 * Why a case is looked at, or what of it cannot be judged.
 *
 * @param holds   true when the criterion is met; false when it cannot be judged because something is not known
 * @param words   the reason in a sentence with its numbers
 * @param figures what it rests on
 */
public record Reason(Criterion criterion, boolean holds, String words, List<Figure> figures) {

    public Reason {
        figures = List.copyOf(figures);
    }
}
