package org.steadwork.meeting;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The minutes of a meeting: a heading, the lines about the meeting itself, and a part for every case.
 *
 * @param closed who closed it and when, in words; blank for a draft
 */
record MinutesText(String title, List<Line> about, List<Part> parts, String closed) {

    /** One line: what, and the words. */
    record Line(String label, String words) {
    }

    /** A case, or the cases taken off; lines in order. */
    record Part(String heading, List<Line> lines) {
    }

    public boolean draft() {
        return closed.isEmpty();
    }

    /** Returns all of it as plain text, as it is kept. */
    String plain() {
        String cases = parts.stream().map(part -> part.heading() + "\n" + lines(part.lines())).collect(Collectors.joining("\n\n"));
        return title + "\n\n" + lines(about) + "\n\n" + cases + (draft() ? "" : "\n\n" + closed) + "\n";
    }

    private static String lines(List<Line> lines) {
        return lines.stream().map(line -> line.label() + ": " + line.words()).collect(Collectors.joining("\n"));
    }
}
