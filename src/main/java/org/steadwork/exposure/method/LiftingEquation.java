package org.steadwork.exposure.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The revised NIOSH lifting equation: the weight that nearly all healthy workers could lift under the task's conditions,
 * and the load as a multiple of it.
 *
 * <p>For two-handed lifting, standing, up to 8 hours. Not for one-handed, seated, kneeling or confined lifting, unstable loads,
 * people, carrying, pushing, pulling. It concerns the low back only and knows neither age, sex, pregnancy nor a complaint.
 * Source: Waters et al. 1993, Ergonomics 36:749-776; DHHS (NIOSH) 94-110 (1994, rev. 2021).
 */
public final class LiftingEquation {

    /** Load constant, kg. */
    public static final double LOAD_CONSTANT = 23;
    static final double KNUCKLE_HEIGHT = 75;
    private static final double NEAREST = 25;
    private static final double FARTHEST = 63;
    private static final double HIGHEST = 175;
    private static final double MOST_ASYMMETRIC = 135;

    private final FrequencyTable frequencies;
    private final Map<Coupling, double[]> couplings;

    /** @param couplings for each coupling the multiplier with hands below 75 cm, and at or above it */
    public LiftingEquation(FrequencyTable frequencies, Map<Coupling, double[]> couplings) {
        this.frequencies = frequencies;
        this.couplings = Map.copyOf(couplings);
    }

    /** What the equation gives: the limit in kg, the index (none where the limit is 0), and the working. */
    public record Result(double limitKg, OptionalDouble index, List<Step> working) {

        /** Says what the index means in the manual's words, put plainly. */
        public String band() {
            if (index.isEmpty()) {
                return "Outside what the equation allows: the limit is nought";
            }
            return LiftingEquation.band(index.getAsDouble());
        }
    }

    /** Says what a lifting index means, in the manual's words put plainly; between 1 and 3 there are only conventions. */
    public static String band(double index) {
        return index <= 1 ? "At or under the design goal"
                : index <= 3 ? "Over the design goal: raised risk for some workers" : "Far over the design goal: raised risk for nearly all workers";
    }

    /**
     * Computes limit and index of one lift.
     *
     * @param loadKg what is lifted, kg in [0, 200]
     * @return limit in [0, 23] kg, not rounded
     */
    public Result of(Lift lift, double loadKg) {
        Checks.within("Load", loadKg, 0, 200, "kg");
        List<Step> working = new ArrayList<>();
        working.add(new Step("Load constant", "23 kg", LOAD_CONSTANT));
        working.add(new Step("Reach", "25 / reach; 1 up to 25 cm, 0 beyond 63 cm", horizontal(lift.reach())));
        working.add(new Step("Height", "1 − 0.003 × |height − 75|; 0 above 175 cm", vertical(lift.height())));
        working.add(new Step("Travel", "0.82 + 4.5 / travel; 1 up to 25 cm, 0 beyond 175 cm", distance(lift.travel())));
        working.add(new Step("Asymmetry", "1 − 0.0032 × angle; 0 beyond 135°", asymmetry(lift.asymmetryDegrees())));
        working.add(new Step("Frequency", "table by lifts a minute, duration and hand height", frequency(lift)));
        working.add(new Step("Coupling", "table by grip and hand height", coupling(lift)));
        double limit = working.stream().mapToDouble(Step::value).reduce(1, (a, b) -> a * b);
        OptionalDouble index = limit > 0 ? OptionalDouble.of(loadKg / limit) : OptionalDouble.empty();
        return new Result(limit, index, List.copyOf(working));
    }

    /** The limit as it would be were the task done once only: frequency multiplier 1. */
    double frequencyIndependentLimit(Lift lift) {
        return LOAD_CONSTANT * horizontal(lift.reach()) * vertical(lift.height()) * distance(lift.travel())
                * asymmetry(lift.asymmetryDegrees()) * coupling(lift);
    }

    double frequency(Lift lift) {
        return frequencies.at(lift.perMinute(), lift.duration(), lift.handsLow());
    }

    FrequencyTable frequencies() {
        return frequencies;
    }

    static double horizontal(double reach) {
        return reach > FARTHEST ? 0 : NEAREST / Math.max(NEAREST, reach);
    }

    static double vertical(double height) {
        return height > HIGHEST ? 0 : 1 - 0.003 * Math.abs(height - KNUCKLE_HEIGHT);
    }

    static double distance(double travel) {
        return travel > HIGHEST ? 0 : travel <= NEAREST ? 1 : 0.82 + 4.5 / travel;
    }

    static double asymmetry(double degrees) {
        return degrees > MOST_ASYMMETRIC ? 0 : 1 - 0.0032 * degrees;
    }

    private double coupling(Lift lift) {
        return couplings.get(lift.coupling())[lift.handsLow() ? 0 : 1];
    }
}
