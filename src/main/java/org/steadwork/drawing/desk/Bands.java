package org.steadwork.drawing.desk;

import java.util.EnumMap;
import java.util.Map;

/** One band for each {@link Target}. */
public record Bands(Map<Target, Band> byTarget) {

    public Bands {
        byTarget = Map.copyOf(byTarget);
        for (Target target : Target.values()) {
            if (!byTarget.containsKey(target)) {
                throw new IllegalArgumentException("There is no band for " + target);
            }
        }
    }

    /** The same bands with some of them replaced. */
    public Bands with(Map<Target, Band> others) {
        Map<Target, Band> all = new EnumMap<>(byTarget);
        all.putAll(others);
        return new Bands(all);
    }

    Band of(Target target) {
        return byTarget.get(target);
    }

    static Target screenTarget(Glasses glasses) {
        return glasses == Glasses.PROGRESSIVE ? Target.SCREEN_PROGRESSIVE : Target.SCREEN_SINGLE;
    }
}
