package org.steadwork.diary.rules;

/**
 * A stretch of one day in local minutes since midnight, its end not included.
 *
 * @param from in [0, 1440)
 * @param to   in (from, 1440]
 */
public record Span(int from, int to) implements Comparable<Span> {

    public static final int DAY = 1440;

    public Span {
        if (from < 0 || to > DAY || from >= to) {
            throw new IllegalArgumentException("A span lies within a day and ends after it begins, but was " + from + " to " + to);
        }
    }

    public static Span wholeDay() {
        return new Span(0, DAY);
    }

    public int minutes() {
        return to - from;
    }

    public boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }

    public boolean holds(Span other) {
        return from <= other.from && other.to <= to;
    }

    @Override
    public int compareTo(Span other) {
        return from != other.from ? Integer.compare(from, other.from) : Integer.compare(to, other.to);
    }
}
