package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;
import org.steadwork.body.Side;

/**
 * Active range of motion: each motion beside the other side first, then beside published values.
 *
 * @param sameAssessor degrees of change that are more than error when one person measured twice
 * @param otherAssessor the same when two people measured; both are general figures from memory and raise no alert alone
 * Source: AAOS and AMA columns as tabulated in a goniometry textbook; Apti et al. 2023 (spine).
 */
public record RangeOfMotion(About about, List<Motion> motions, Threshold sameAssessor, Threshold otherAssessor) {

    public RangeOfMotion {
        motions = List.copyOf(motions);
    }

    /**
     * How a reading stands to a published value.
     *
     * @param lowPercent share of the lower printed value in percent, not rounded; {@code highPercent} of the higher: the same unless a
     *         range is printed
     */
    public record Share(MotionReference reference, double lowPercent, double highPercent) {
    }

    public Optional<Motion> find(String key) {
        return motions.stream().filter(motion -> motion.key().equals(key)).findFirst();
    }

    /** Returns the motions measured for complaints of a region, in the order of the content. */
    public List<Motion> forRegion(String region) {
        return motions.stream().filter(motion -> motion.regions().contains(region)).toList();
    }

    /** Returns the reading as a share of each published value, the leading one first; empty for a motion not measured. */
    public List<Share> shares(MotionReading reading) {
        if (reading.degrees().isEmpty()) {
            return List.of();
        }
        double degrees = reading.degrees().getAsDouble();
        return reading.motion().references().stream()
                .map(reference -> new Share(reference, degrees / reference.high() * 100, degrees / reference.low() * 100)).toList();
    }

    /** Compares one side with the other of the same motion; empty when either was not measured. */
    public Optional<SideComparison> sides(MotionReading side, MotionReading other) {
        if (!side.motion().key().equals(other.motion().key()) || side.side() == other.side() || side.side() == Side.CENTRE) {
            throw new IllegalArgumentException("Sides are compared on one motion, left with right");
        }
        if (side.degrees().isEmpty() || other.degrees().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(SideComparison.of(side.degrees().getAsDouble(), other.degrees().getAsDouble()));
    }

    /**
     * Judges a change of one motion of one side against error; what matters is not known. Empty when either was not measured or the
     * devices differ. Unless both readings name the same assessor, the larger error counts.
     */
    public Optional<ChangeVerdict> change(MotionReading earlier, MotionReading later) {
        if (!earlier.motion().key().equals(later.motion().key()) || earlier.side() != later.side()) {
            throw new IllegalArgumentException("A change is judged on one motion of one side");
        }
        if (earlier.degrees().isEmpty() || later.degrees().isEmpty() || earlier.device() != later.device()) {
            return Optional.empty();
        }
        boolean same = !earlier.assessor().isEmpty() && earlier.assessor().equals(later.assessor());
        return Optional.of(ChangeVerdict.of(new Thresholds(List.of((same ? sameAssessor : otherAssessor).leading())), Direction.HIGHER_BETTER, "",
                earlier.degrees().getAsDouble(), later.degrees().getAsDouble()));
    }
}
