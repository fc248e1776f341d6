package org.steadwork.redflag.rules;

import java.util.Collection;
import org.steadwork.kernel.Answer;

/**
 * The lowest and the highest count that answers allow: an open answer counts 0 in the lowest and its weight in the highest.
 *
 * @param low the count when every open answer turns out no
 * @param high the count when every open answer turns out yes; never below {@code low}
 */
public record Range(int low, int high) {

    public Range {
        if (low > high) {
            throw new IllegalArgumentException("A range goes from low to high, but was " + low + " to " + high);
        }
    }

    static Range of(Collection<Answer> answers) {
        Range sum = new Range(0, 0);
        for (Answer answer : answers) {
            sum = sum.plus(points(answer, 1));
        }
        return sum;
    }

    /** Returns the points of one answer; a negative weight takes points off. */
    static Range points(Answer answer, int weight) {
        return switch (answer) {
            case YES -> new Range(weight, weight);
            case NO -> new Range(0, 0);
            case UNKNOWN, NOT_ASKED -> new Range(Math.min(0, weight), Math.max(0, weight));
        };
    }

    Range plus(Range other) {
        return new Range(low + other.low, high + other.high);
    }

    Answer atLeast(int threshold) {
        if (low >= threshold) {
            return Answer.YES;
        }
        return high < threshold ? Answer.NO : Answer.UNKNOWN;
    }

    /** Returns one number, or both with "to" between them. */
    public String words() {
        return low == high ? number(low) : number(low) + " to " + number(high);
    }

    private static String number(int n) {
        return n < 0 ? "−" + -n : String.valueOf(n);
    }
}
