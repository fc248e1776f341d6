package org.steadwork.meeting;

import java.util.List;
import java.util.stream.Stream;
import org.steadwork.letter.disclosure.InformationCategory;

/**
 * A case on one page, for the meeting.
 *
 * @param name   what the case is called: its number, never the name of the person
 * @param lines  the facts, each with the kind of information it is
 * @param scores at most three measures, the leading one first, with what came of them
 */
record CaseBrief(String name, List<Line> lines, List<Score> scores) {

    CaseBrief {
        lines = List.copyOf(lines);
        scores = List.copyOf(scores);
    }

    /** One line of the page: what, and its values one under the other. */
    record Line(String label, InformationCategory category, List<String> values) {
    }

    /**
     * One measure from the first score to the latest.
     *
     * @param change signed, or a dash; {@code error} and {@code matters} the amounts it is judged by, "not known" where none is published
     * @param words  the judgement in words
     * @param chart  the drawn trend with its error band
     */
    record Score(String label, InformationCategory category, String first, String firstOn, String last, String lastOn, String change, String error,
            String matters, String words, Chart chart) {
    }

    /** A trend as svg for the screen in two sizes, and for paper in one. */
    record Chart(String screen, String paper) {
    }

    /** Returns the page as it may be shown to those in the room. */
    Shown in(Room room) {
        List<String> held = Stream.concat(lines.stream().filter(line -> !room.may(line.category())).map(Line::label),
                scores.stream().filter(score -> !room.may(score.category())).map(Score::label)).distinct().toList();
        return new Shown(name, lines.stream().filter(line -> room.may(line.category())).toList(),
                scores.stream().filter(score -> room.may(score.category())).toList(), held);
    }

    /** What may be shown, and the labels of what is held back. */
    record Shown(String name, List<Line> lines, List<Score> scores, List<String> heldBack) {

        public String heldBackWords() {
            return String.join(", ", heldBack);
        }
    }
}
