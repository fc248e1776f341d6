package org.steadwork.exercise.dayplan;

import java.util.OptionalInt;

/**
 * Sessions reported done against sessions planned. A diary overcounts (median 220 written down against 176 measured by a
 * sensor over 12 weeks), so it is shown as reported.
 *
 * @param done    sessions reported, at least 0; null when nothing was reported
 * @param planned sessions planned, at least 0; 0 makes the share unknown, not 0 %
 *
 *                Source: bands common practice, no source.
 */
public record Adherence(Integer done, int planned) {

    /** What the share means; unknown is neither good nor bad. */
    public enum Band {
        GOOD("well kept"), PARTIAL("partly kept"), LOW("hardly kept"), UNKNOWN("not known");

        private final String label;

        Band(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    private static final int GOOD_FROM_PER_CENT = 80;
    private static final int PARTIAL_FROM_PER_CENT = 50;

    public Adherence {
        if (done != null && !(done >= 0) || !(planned >= 0)) {
            throw new IllegalArgumentException("Sessions are counted from 0, but were " + done + " of " + planned);
        }
    }

    /** Whole per cent, half rounded up; the band is told from it, so that both agree; more than planned stays above 100. Empty when not known. */
    public OptionalInt perCent() {
        return done == null || planned == 0 ? OptionalInt.empty() : OptionalInt.of((int) Math.round(100.0 * done / planned));
    }

    public Band band() {
        OptionalInt share = perCent();
        if (share.isEmpty()) {
            return Band.UNKNOWN;
        }
        return share.getAsInt() >= GOOD_FROM_PER_CENT ? Band.GOOD : share.getAsInt() >= PARTIAL_FROM_PER_CENT ? Band.PARTIAL : Band.LOW;
    }
}
