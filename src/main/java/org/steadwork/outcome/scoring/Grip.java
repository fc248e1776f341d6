package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steadwork.body.Side;

/**
 * Grip strength by dynamometer: the mean of the trials of one hand, beside the norms for age, group and hand.
 *
 * @param trials how many trials the method asks for
 * @param norms published norms; none under 20 years
 * @param thresholds amounts of change in kilograms
 * Source: Mathiowetz et al., Arch Phys Med Rehabil 1985;66:69 (norms, mean of three); Bohannon, J Phys Ther Sci 2019;31:75 (change).
 */
public record Grip(About about, int trials, List<GripNorm> norms, Thresholds thresholds) {

    private static final double KG_A_POUND = 0.45359237;

    public Grip {
        norms = List.copyOf(norms);
    }

    /** Converts pounds to kilograms, not rounded. */
    public static double kilograms(double pounds) {
        return pounds * KG_A_POUND;
    }

    /** Converts kilograms to pounds, not rounded. */
    public static double pounds(double kilograms) {
        return kilograms / KG_A_POUND;
    }

    /**
     * Takes the trials of one hand together.
     *
     * @param hand left or right
     * @param given one to as many trials as the method asks for, in their order; more are refused
     * @param age in whole years at the day of the test; empty, or outside the table, gives no norm
     * @param group empty when not recorded: then there is no norm
     */
    public GripResult measure(Side hand, List<GripTrial> given, OptionalInt age, Optional<NormGroup> group) {
        if (hand == Side.CENTRE) {
            throw new IllegalArgumentException("Grip is measured on the left or the right hand");
        }
        if (given.isEmpty() || given.size() > trials) {
            throw new IllegalArgumentException("Grip has 1 to " + trials + " trials, but there are " + given.size());
        }
        List<Double> readings = given.stream().filter(trial -> trial.kg().isPresent()).map(trial -> trial.kg().getAsDouble()).toList();
        List<String> reasons = given.stream().map(GripTrial::notDone).filter(reason -> !reason.isEmpty()).toList();
        Optional<GripNorm> norm = age.isEmpty() || group.isEmpty() ? Optional.empty()
                : norms.stream().filter(row -> row.holds(group.get(), hand, age.getAsInt())).findFirst();
        if (readings.isEmpty()) {
            return new GripResult(hand, OptionalDouble.empty(), 0, false, reasons, norm, OptionalDouble.empty(), OptionalDouble.empty(),
                    "No trial has a reading");
        }
        double mean = readings.stream().mapToDouble(Double::doubleValue).sum() / readings.size();
        OptionalDouble z = norm.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of((mean - norm.get().meanKg()) / norm.get().sdKg());
        OptionalDouble percent = norm.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(mean / norm.get().meanKg() * 100);
        return new GripResult(hand, OptionalDouble.of(mean), readings.size(), readings.size() < trials, reasons, norm, z, percent,
                working(readings, mean, norm, z, percent));
    }

    /** Judges a change of strength in kilograms: importance only, because no measurement error is confirmed. */
    public ChangeVerdict change(double earlierKg, double laterKg) {
        return ChangeVerdict.of(thresholds, Direction.HIGHER_BETTER, "", earlierKg, laterKg);
    }

    private static String working(List<Double> readings, double mean, Optional<GripNorm> norm, OptionalDouble z, OptionalDouble percent) {
        List<String> parts = new ArrayList<>();
        parts.add("(" + String.join(" + ", readings.stream().map(Plain::number).toList()) + ") \u00f7 " + readings.size() + " = "
                + Plain.number(mean) + " kg");
        norm.ifPresent(row -> parts.add("norm " + Plain.number(row.meanKg()) + " kg (SD " + Plain.number(row.sdKg()) + "), printed "
                + row.meanPounds() + " (" + row.sdPounds() + ") lb; z " + Plain.number(z.getAsDouble()) + ", " + Plain.number(percent.getAsDouble())
                + "\u00a0% of the norm"));
        return String.join("; ", parts);
    }
}
