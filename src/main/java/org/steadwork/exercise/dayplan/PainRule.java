package org.steadwork.exercise.dayplan;

/**
 * How pain steers the load from one session to the next.
 *
 * @param safeUpTo       pain during or just after, 0-10, up to which the load may go up
 * @param acceptableUpTo pain up to which the load may stay when it settles by the next morning
 *
 *                       Source: pain-monitoring model (Thomeé 1997; Silbernagel), numbers from memory.
 */
public record PainRule(int safeUpTo, int acceptableUpTo) {

    /** What the next morning was like. */
    public enum Morning {
        USUAL("back to usual"), WORSE("higher or stiffer than usual"), NOT_ASKED("not asked");

        private final String label;

        Morning(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** What to do next; a proposal, the clinician decides. */
    public enum Advice {
        PROGRESS("Safe: a step up is possible"), HOLD("Acceptable: hold, or a small step"), LESS_LOAD("Same exercise with less load or fewer sets"),
        SMALLER("Hardly kept: ask what is in the way and agree on a smaller plan first"),
        STEP_BACK("Stop that set; one step back"), REVIEW("Rising week by week: step back and look again; not explained, repeat the red-flag questions"),
        ASK("Not enough is known: ask for pain during and for the next morning");

        private final String label;

        Advice(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public PainRule {
        if (!(0 <= safeUpTo && safeUpTo <= acceptableUpTo && acceptableUpTo <= 10)) {
            throw new IllegalArgumentException("Pain limits run from 0 to 10, but were " + safeUpTo + " and " + acceptableUpTo);
        }
    }

    /** The same rule with a stricter or looser ceiling. */
    public PainRule withCeiling(int ceiling) {
        return new PainRule(Math.min(safeUpTo, ceiling), ceiling);
    }

    /**
     * @param during    pain during or just after, [0, 10]; null when not asked
     * @param rising    true when pain rises from week to week
     */
    public Advice advice(Integer during, Morning morning, boolean rising) {
        if (during != null && !(during >= 0 && during <= 10)) {
            throw new IllegalArgumentException("Pain runs from 0 to 10, but was " + during);
        }
        if (rising) {
            return Advice.REVIEW;
        }
        if (during != null && during > acceptableUpTo) {
            return Advice.STEP_BACK;
        }
        if (morning == Morning.WORSE) {
            return Advice.LESS_LOAD;
        }
        if (during == null || morning == Morning.NOT_ASKED) {
            return Advice.ASK;
        }
        return during <= safeUpTo ? Advice.PROGRESS : Advice.HOLD;
    }

    /**
     * The same with how the exercise was kept: what is hardly kept is made smaller before it is made harder, or held as it is.
     * What pain asks to lessen goes first; adherence that is not known changes nothing.
     *
     * <p>Source: low adherence leads to a talk and a smaller plan, never to a reproach: common practice, no source.
     */
    public Advice advice(Integer during, Morning morning, boolean rising, Adherence.Band kept) {
        Advice byPain = advice(during, morning, rising);
        return switch (byPain) {
            case PROGRESS, HOLD, ASK -> kept == Adherence.Band.LOW ? Advice.SMALLER : byPain;
            case LESS_LOAD, STEP_BACK, REVIEW, SMALLER -> byPain;
        };
    }
}
