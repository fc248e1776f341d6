package org.steadwork.exposure.method;

import java.util.List;

/**
 * The revised strain index of 2017 for one hand in one task: the product of five continuous multipliers.
 *
 * <p>The formulas are from memory (they meet at every break point). Not for neck, shoulder or back, vibration, contact stress.
 * Source: Garg, Moore and Kapellusch 2017, Ergonomics 60:912-922.
 */
public final class RevisedStrainIndex {

    /** Above this the exposure counts as higher; from memory. */
    public static final double HIGHER = 10;

    private RevisedStrainIndex() {
    }

    /**
     * One hand's task.
     *
     * @param intensity effort as a share of the greatest (Borg CR-10 / 10), (0, 1]
     * @param perMinute exertions a minute, [0, 200]
     * @param seconds length of one exertion, [0, 60] s; efforts and length together fill at most the minute
     * @param wristDegrees wrist angle, flexion positive, extension negative, [−90, 90]
     * @param hours task a day, [0, 24] h
     */
    public record Task(double intensity, double perMinute, double seconds, double wristDegrees, double hours) {

        public Task {
            Checks.within("Intensity", intensity, Double.MIN_VALUE, 1, "");
            Checks.within("Exertions a minute", perMinute, 0, 200, "/min");
            Checks.within("Length of an exertion", seconds, 0, 60, "s");
            Checks.within("Wrist angle", wristDegrees, -90, 90, "degrees");
            Checks.within("Hours a day", hours, 0, 24, "h");
            Checks.within("Exertions a minute × their length", perMinute * seconds, 0, 60 + 1e-9, "s a minute");
        }
    }

    /** The index, not rounded, and the working. */
    public record Result(double index, List<Step> working) {

        public String band() {
            return index <= HIGHER ? "Lower exposure" : "Higher exposure";
        }
    }

    public static Result of(Task task) {
        List<Step> working = List.of(new Step("Intensity", "cubic in the share of greatest effort", intensity(task.intensity())),
                new Step("Exertions a minute", "0.10 + 0.25 E; 0.00334 E^1.96 above 90", efforts(task.perMinute())),
                new Step("Length of an exertion", "0.45 + 0.31 D; 19.17 ln D − 59.44 above 60 s", duration(task.seconds())),
                new Step("Wrist", "flexion 1.2 e^(0.009 P) − 0.2; extension 1 up to 30°, then 1 + 0.00028 (P − 30)²", posture(task.wristDegrees())),
                new Step("Hours a day", "0.20 up to 0.05 h; then 0.042 H + 0.090 ln H + 0.477", hours(task.hours())));
        return new Result(StrainIndex.product(working.stream().mapToDouble(Step::value).toArray()), working);
    }

    static double intensity(double i) {
        return i <= 0.4 ? 30.00 * i * i * i - 15.60 * i * i + 13.00 * i + 0.40 : 36.00 * i * i * i - 33.30 * i * i + 24.77 * i - 1.86;
    }

    static double efforts(double e) {
        return e <= 90 ? 0.10 + 0.25 * e : 0.00334 * Math.pow(e, 1.96);
    }

    static double duration(double d) {
        return d <= 60 ? 0.45 + 0.31 * d : 19.17 * Math.log(d) - 59.44;
    }

    static double posture(double degrees) {
        if (degrees >= 0) {
            return 1.2 * Math.exp(0.009 * degrees) - 0.2;
        }
        double extension = -degrees;
        return extension <= 30 ? 1 : 1 + 0.00028 * (extension - 30) * (extension - 30);
    }

    static double hours(double h) {
        return h <= 0.05 ? 0.20 : 0.042 * h + 0.090 * Math.log(h) + 0.477;
    }
}
