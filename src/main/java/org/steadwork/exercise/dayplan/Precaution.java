package org.steadwork.exercise.dayplan;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.kernel.Answer;

/**
 * A condition that bars an exercise or asks for thought before it.
 *
 * @param bars      true for a contraindication, false where the clinician ticks "considered" and may adapt
 * @param condition key of the condition
 * @param note      how to adapt; empty when there is none
 */
public record Precaution(boolean bars, String condition, String note) {

    /** What an answer makes of a precaution. */
    public enum Effect { NONE, CONSIDER, BARRED }

    private static final Pattern WRITTEN = Pattern.compile("(contra|care):([a-z_]+)(?:\\((.+)\\))?");

    /** Reads {@code contra:KEY} or {@code care:KEY(note)}. */
    public static Precaution parse(String text) {
        Matcher parts = WRITTEN.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException("A precaution is contra:KEY or care:KEY(note), but was '" + text + "'");
        }
        return new Precaution(parts.group(1).equals("contra"), parts.group(2), Optional.ofNullable(parts.group(3)).orElse(""));
    }

    /** Neither unknown nor not asked is no: both behave as care, whichever kind this is. */
    public Effect effect(Answer answer) {
        return switch (answer) {
            case NO -> Effect.NONE;
            case YES -> bars ? Effect.BARRED : Effect.CONSIDER;
            case UNKNOWN, NOT_ASKED -> Effect.CONSIDER;
        };
    }
}
