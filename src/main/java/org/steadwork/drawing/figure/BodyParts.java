package org.steadwork.drawing.figure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names for several segments at once, as the data use them for what moves. */
final class BodyParts {

    private BodyParts() {
    }

    static Set<String> expand(List<String> names) {
        Set<String> segments = new LinkedHashSet<>();
        for (String name : names) {
            int ending = name.lastIndexOf('_');
            String side = ending < 0 ? "" : name.substring(ending);
            String part = ending < 0 ? name : name.substring(0, ending);
            switch (part) {
                case "trunk" -> segments.addAll(List.of("pelvis", "belly", "chest", "girdle_R", "girdle_L"));
                case "head" -> segments.addAll(List.of("head", "neck"));
                case "arm" -> add(segments, side, "upper", "fore", "hand");
                case "leg" -> add(segments, side, "thigh", "shank", "foot", "toes");
                case "hand" -> add(segments, side, "hand", "palm", "finger1", "finger2", "finger3", "finger4", "thumb");
                case "fingers" -> add(segments, side, "finger1", "finger2", "finger3", "finger4");
                case "foot" -> add(segments, side, "foot", "toes");
                default -> segments.add(name);
            }
        }
        return segments;
    }

    private static void add(Set<String> segments, String side, String... parts) {
        for (String part : parts) {
            segments.add(part + side);
        }
    }
}
