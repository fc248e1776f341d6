package org.steadwork.exposure.method;

import java.util.OptionalDouble;

/**
 * How long a posture held for more than four seconds may be held.
 *
 * <p>All limits are from memory. Not for dynamic work, external force, persons with complaints; not a diagnosis.
 * Source: ISO 11226:2000 with corrigendum 2006.
 */
public final class StaticPosture {

    /** What the standard says of a held posture. */
    public enum Verdict {
        ACCEPTABLE, TIME_LIMITED, NOT_RECOMMENDED
    }

    /** The verdict, and for a time-limited posture the longest holding time in minutes. */
    public record Result(Verdict verdict, OptionalDouble minutes) {

        private static Result of(Verdict verdict) {
            return new Result(verdict, OptionalDouble.empty());
        }

        private static Result limited(double minutes) {
            return new Result(Verdict.TIME_LIMITED, OptionalDouble.of(minutes));
        }
    }

    private StaticPosture() {
    }

    /** @param degrees trunk inclination, forward positive, [−90, 180]; {@code asymmetric} for any twist or side-bend */
    public static Result trunk(double degrees, boolean fullySupported, boolean asymmetric) {
        Checks.within("Trunk inclination", degrees, -90, 180, "degrees");
        if (asymmetric || degrees > 60 || (degrees < 0 && !fullySupported)) {
            return Result.of(Verdict.NOT_RECOMMENDED);
        }
        return degrees <= 20 || fullySupported ? Result.of(Verdict.ACCEPTABLE) : Result.limited(4 - 3 * (degrees - 20) / 40);
    }

    /** @param degrees head inclination, forward positive, [−90, 180]; {@code supported}: trunk fully supported, or the head when bent back */
    public static Result head(double degrees, boolean supported, boolean asymmetric) {
        Checks.within("Head inclination", degrees, -90, 180, "degrees");
        if (asymmetric || degrees > 85 || (degrees < 0 && !supported)) {
            return Result.of(Verdict.NOT_RECOMMENDED);
        }
        return degrees <= 25 || supported ? Result.of(Verdict.ACCEPTABLE) : Result.limited(8 - 7 * (degrees - 25) / 60);
    }

    /** Neck flexion is head minus trunk inclination, degrees. */
    public static Result neck(double headDegrees, double trunkDegrees, boolean headSupported) {
        double flexion = Checks.within("Head inclination", headDegrees, -90, 180, "degrees") - Checks.within("Trunk inclination", trunkDegrees, -90, 180, "degrees");
        boolean bad = flexion > 25 || (flexion < 0 && !headSupported);
        return Result.of(bad ? Verdict.NOT_RECOMMENDED : Verdict.ACCEPTABLE);
    }

    /** @param degrees upper-arm elevation, [0, 180]; {@code awkward} for behind the body, across it, extreme rotation or a raised shoulder */
    public static Result upperArm(double degrees, boolean fullySupported, boolean awkward) {
        Checks.within("Upper-arm elevation", degrees, 0, 180, "degrees");
        if (awkward || degrees > 60) {
            return Result.of(Verdict.NOT_RECOMMENDED);
        }
        return degrees <= 20 || fullySupported ? Result.of(Verdict.ACCEPTABLE) : Result.limited(3 - 2 * (degrees - 20) / 40);
    }

    /** The knee angle while sitting, degrees in [0, 180]. */
    public static Result kneeSitting(double degrees) {
        Checks.within("Knee angle", degrees, 0, 180, "degrees");
        return Result.of(degrees < 90 || degrees > 135 ? Verdict.NOT_RECOMMENDED : Verdict.ACCEPTABLE);
    }
}
