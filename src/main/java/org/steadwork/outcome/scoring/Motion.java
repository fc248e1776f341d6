package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;

/**
 * One active motion of a joint or a part of the spine, measured in degrees.
 *
 * @param key unique among the motions
 * @param regions keys of the body regions for whose complaints it is measured
 * @param sided whether left and right are measured apart; a motion of the spine forwards is not
 * @param device what it is usually measured with
 * @param position how the person sits or stands, in words
 * @param mostDegrees the most that can be entered: a bound against slips of the keyboard, not a norm
 * @param references published values, the first one leading
 */
public record Motion(String key, String name, String joint, List<String> regions, boolean sided, Device device, String position,
        int mostDegrees, List<MotionReference> references) {

    /** What a motion is measured with. Values of two devices are not one series. */
    public enum Device {
        GONIOMETER("goniometer"), INCLINOMETER("inclinometer"), DIGITAL_GONIOMETER("digital goniometer");

        private final String words;

        Device(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Motion {
        regions = List.copyOf(regions);
        references = List.copyOf(references);
        if (mostDegrees < 1 || mostDegrees > 360) {
            throw new IllegalArgumentException("The most of a motion is 1 to 360 degrees, but is " + mostDegrees);
        }
    }

    /** Returns the reference that percentages are taken of. */
    public Optional<MotionReference> leading() {
        return references.stream().findFirst();
    }
}
