package org.steadwork.outcome.scoring;

import org.steadwork.body.Side;

/**
 * What healthy people of one age group squeeze with one hand, in pounds as printed. The hand is the right or the left one, not the
 * dominant one.
 *
 * @param fromAge first age in whole years, included
 * @param toAge last age, included; 200 where the table is open
 * @param meanPounds above 0; {@code sdPounds} likewise
 */
public record GripNorm(NormGroup group, Side hand, int fromAge, int toAge, double meanPounds, double sdPounds) {

    public GripNorm {
        if (hand == Side.CENTRE || !(meanPounds > 0 && meanPounds < 300) || !(sdPounds > 0 && sdPounds < 300) || fromAge < 0 || toAge < fromAge) {
            throw new IllegalArgumentException("Not a norm of grip strength: " + hand + ", " + fromAge + " to " + toAge + " years, " + meanPounds
                    + " (" + sdPounds + ") lb");
        }
    }

    boolean holds(NormGroup of, Side side, int age) {
        return group == of && hand == side && age >= fromAge && age <= toAge;
    }

    public double meanKg() {
        return Grip.kilograms(meanPounds);
    }

    public double sdKg() {
        return Grip.kilograms(sdPounds);
    }
}
