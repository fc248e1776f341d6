package org.steadwork.exposure.method;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * The lifting equation as the manual's own examples compute it: US units and multipliers as printed, with two decimals.
 * Kept to reproduce the published examples; cases are computed in metric units by {@link LiftingEquation}.
 * Source: DHHS (NIOSH) 94-110 (1994, rev. 2021), tables 1-7.
 */
public final class PrintedLifting {

    private static final double LOAD_CONSTANT_LB = 51;
    private static final double KNUCKLE_HEIGHT_IN = 30;

    private final FrequencyTable frequencies;
    private final Map<Coupling, double[]> couplings;
    private final Map<Double, Double> printedReach;

    /** @param printedReach the printed horizontal multipliers by inches; two of them differ from the formula */
    public PrintedLifting(FrequencyTable frequencies, Map<Coupling, double[]> couplings, Map<Double, Double> printedReach) {
        this.frequencies = frequencies;
        this.couplings = Map.copyOf(couplings);
        this.printedReach = Map.copyOf(printedReach);
    }

    /** Returns the limit in pounds, not rounded, of a lift given in inches and degrees. */
    public double limitPounds(double reach, double height, double travel, double degrees, double perMinute, LiftingDuration duration,
            Coupling coupling) {
        boolean low = height < KNUCKLE_HEIGHT_IN;
        double horizontal = reach > 25 ? 0 : printedReach.getOrDefault(reach, printed(10 / Math.max(10, reach)));
        double vertical = height > 70 ? 0 : printed(1 - 0.0075 * Math.abs(height - KNUCKLE_HEIGHT_IN));
        double distance = travel > 70 ? 0 : travel <= 10 ? 1 : printed(0.82 + 1.8 / travel);
        double asymmetry = degrees > 135 ? 0 : printed(1 - 0.0032 * degrees);
        return LOAD_CONSTANT_LB * horizontal * vertical * distance * asymmetry * frequencies.at(perMinute, duration, low)
                * couplings.get(coupling)[low ? 0 : 1];
    }

    /** The index as the manual prints it: load over the limit as printed, to a tenth of a pound. */
    public static double index(double loadPounds, double limitPounds) {
        return loadPounds / (Math.round(limitPounds * 10) / 10.0);
    }

    private static double printed(double multiplier) {
        return BigDecimal.valueOf(multiplier).setScale(6, RoundingMode.HALF_UP).setScale(2, RoundingMode.HALF_UP).doubleValue();
    }
}
