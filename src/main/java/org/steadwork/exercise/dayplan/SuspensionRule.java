package org.steadwork.exercise.dayplan;

import java.util.List;
import java.util.Set;
import org.steadwork.body.BodyRegion;

/**
 * What a suspension that a red flag sets does to exercises.
 *
 * @param token  name of the suspension
 * @param words  what waits, for the clinician
 * @param blocks exercises that fit one of these are not given
 * @param limits exercises that fit one of these are given only as the note says
 */
public record SuspensionRule(String token, String words, List<Match> blocks, List<Match> limits) {

    /** What a suspension does to one exercise; {@code note} is empty unless limited. */
    public record Effect(Level level, String note) {

        private static final Effect NONE = new Effect(Level.NONE, "");
        private static final Effect BLOCKED = new Effect(Level.BLOCKED, "");
    }

    /** How far an exercise is held back. */
    public enum Level { NONE, LIMITED, BLOCKED }

    /**
     * Which exercises: all that is named must fit; empty names fit everything.
     *
     * @param everything true for every exercise
     * @param ownRegion  only exercises of the region of the flag
     * @param position   a word of the position; empty for any
     */
    public record Match(boolean everything, boolean ownRegion, Set<String> kinds, Set<BodyRegion> regions, Set<String> keys, String position, String note) {

        public Match {
            if (!everything && !ownRegion && kinds.isEmpty() && regions.isEmpty() && keys.isEmpty() && position.isEmpty()) {
                throw new IllegalArgumentException("A match names everything, its own region, kinds, regions, keys or a position");
            }
        }

        boolean fits(Exercise exercise, Set<BodyRegion> flagged) {
            // a flag of unknown region holds back every region: caution first
            boolean region = !ownRegion || flagged.isEmpty() || exercise.regions().stream().anyMatch(flagged::contains);
            return everything || region && (kinds.isEmpty() || kinds.contains(exercise.kind().key()))
                    && (regions.isEmpty() || exercise.regions().stream().anyMatch(regions::contains))
                    && (keys.isEmpty() || keys.contains(exercise.key())) && exercise.position().contains(position);
        }
    }

    /** The rule for a token that content does not know: it holds back everything. */
    public static SuspensionRule unknown(String token) {
        return new SuspensionRule(token, "A suspension that exercises do not know: everything waits", List.of(new Match(true, false, Set.of(), Set.of(), Set.of(), "", "")), List.of());
    }

    /** @param flagged regions of the flag that set the suspension; empty when not known, which holds back every region */
    public Effect effect(Exercise exercise, Set<BodyRegion> flagged) {
        if (blocks.stream().anyMatch(m -> m.fits(exercise, flagged))) {
            return Effect.BLOCKED;
        }
        return limits.stream().filter(m -> m.fits(exercise, flagged)).findFirst().map(m -> new Effect(Level.LIMITED, m.note())).orElse(Effect.NONE);
    }
}
