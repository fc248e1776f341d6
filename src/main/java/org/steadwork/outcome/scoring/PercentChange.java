package org.steadwork.outcome.scoring;

import java.util.OptionalDouble;

/**
 * Change as a percentage of the baseline, and when not to use it.
 *
 * @param value improvement in percent of the baseline, not rounded, negative for worsening; empty where it is undefined
 * @param unstable true when the baseline is under three tenths of the scale: show points only (a rule of ours, no source)
 * @param caution what to know before reading it, in words; blank when nothing
 */
public record PercentChange(OptionalDouble value, boolean unstable, String caution) {

    private static final double SMALLEST_STABLE_SHARE = 0.3;

    /** Computes (baseline − later) ÷ baseline × 100 on a pain rating from 0 to 10. Source: Dworkin et al. 2008; Farrar et al. 2001. */
    public static PercentChange ofPain(double baseline, double later) {
        return of(0, 10, Direction.LOWER_BETTER, baseline, later);
    }

    /** Computes the change on the scale of an instrument, with the baselines named from which that scale cannot show one. */
    public static PercentChange of(Instrument instrument, double baseline, double later) {
        PercentChange change = of(instrument.lowest(), instrument.highest(), instrument.direction(), baseline, later);
        String limits = ScaleEnds.caution(instrument, baseline);
        return limits.isEmpty() ? change : new PercentChange(change.value, change.unstable, (change.caution + " " + limits).strip());
    }

    /**
     * Computes improvement ÷ baseline × 100 on a scale.
     *
     * @param lowest end of the scale; a percentage has a meaning only where it is 0
     * @param baseline within the scale, and later likewise; anything else, NaN too, is refused
     */
    static PercentChange of(double lowest, double highest, Direction direction, double baseline, double later) {
        if (!(baseline >= lowest && baseline <= highest) || !(later >= lowest && later <= highest)) {
            throw new IllegalArgumentException("The scale goes from " + Plain.number(lowest) + " to " + Plain.number(highest) + ", but these are "
                    + baseline + " and " + later);
        }
        if (lowest != 0) {
            return new PercentChange(OptionalDouble.empty(), true, "A percentage has no meaning on a scale that does not begin at 0.");
        }
        if (baseline == 0) {
            return new PercentChange(OptionalDouble.empty(), true, "A percentage of a baseline of 0 is undefined.");
        }
        boolean unstable = baseline < SMALLEST_STABLE_SHARE * highest;
        return new PercentChange(OptionalDouble.of(direction.improvement(baseline, later) / baseline * 100), unstable,
                unstable ? "From so low a baseline a percentage jumps with every point: read the points." : "");
    }

    /** Returns the published word for a fall in pain: minimal from 10 %, moderate from 30 %, substantial from 50 %; blank under that. */
    public String painWord() {
        if (value.isEmpty() || value.getAsDouble() < 10) {
            return "";
        }
        return value.getAsDouble() >= 50 ? "substantial" : value.getAsDouble() >= 30 ? "moderate" : "minimal";
    }

    /** True when pain fell by at least 30 % and at least 2 points: one alone misleads at low or high baselines (a rule of ours). */
    public static boolean responder(double baseline, double later) {
        PercentChange change = ofPain(baseline, later);
        return change.value.isPresent() && change.value.getAsDouble() >= 30 && baseline - later >= 2;
    }
}
