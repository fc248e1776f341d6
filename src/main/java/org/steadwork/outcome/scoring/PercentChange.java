package org.steadwork.outcome.scoring;

import java.util.OptionalDouble;

/**
 * Change as a percentage of the baseline, and when not to use it.
 *
 * @param value improvement in percent of the baseline, negative for worsening; empty at a baseline of 0, where it is undefined
 * @param unstable true when the baseline is under 3 on a 0 to 10 scale: show points only (a rule of ours, no source)
 */
public record PercentChange(OptionalDouble value, boolean unstable) {

    private static final double SMALLEST_STABLE_PAIN = 3;

    /** Computes (baseline − later) ÷ baseline × 100 on a pain rating from 0 to 10. Source: Dworkin et al. 2008; Farrar et al. 2001. */
    public static PercentChange ofPain(double baseline, double later) {
        if (!(baseline >= 0 && baseline <= 10) || !(later >= 0 && later <= 10)) {
            throw new IllegalArgumentException("Pain is rated from 0 to 10, but these are " + baseline + " and " + later);
        }
        OptionalDouble value = baseline == 0 ? OptionalDouble.empty() : OptionalDouble.of((baseline - later) / baseline * 100);
        return new PercentChange(value, baseline < SMALLEST_STABLE_PAIN);
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
