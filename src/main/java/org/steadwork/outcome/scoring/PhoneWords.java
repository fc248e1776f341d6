package org.steadwork.outcome.scoring;

import java.util.List;

/**
 * How the patient's own page asks an instrument: in words of our own, one question an item.
 *
 * @param asks one for each item, in their order; {@code {start}} stands for the day on which the case was opened
 * @param low  what the lowest answer means
 * @param high what the highest answer means
 */
public record PhoneWords(String heading, List<String> asks, String low, String high) {

    private static final String START = "{start}";

    public PhoneWords {
        asks = List.copyOf(asks);
    }

    /** The question of an item, counted from 1. */
    public String ask(int item, String start) {
        return asks.get(item - 1).replace(START, start);
    }
}
