package org.steadwork.casefile;

import java.util.Locale;
import java.util.function.Function;

/** The scales of one zone, each a whole number in [0, 10] or not asked. */
public enum PainScale {
    NOW("Now", "pain now", null, null, RegionReading::now),
    AVERAGE("Average", "average pain, last 7 days", null, null, RegionReading::average),
    WORST("Worst", "worst pain, last 7 days", null, null, RegionReading::worst),
    AT_WORK("At work", "pain at work", "no pain", "worst you can imagine", RegionReading::atWork),
    LIMITS_WORK("Limits work", "how much it limits work", "not at all", "no work possible", RegionReading::limitsWork);

    private final String label;
    private final String spoken;
    private final String least;
    private final String most;
    private final Function<RegionReading, Integer> value;

    PainScale(String label, String spoken, String least, String most, Function<RegionReading, Integer> value) {
        this.label = label;
        this.spoken = spoken;
        this.least = least;
        this.most = most;
        this.value = value;
    }

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String label() {
        return label;
    }

    /** Returns the words that say the scale without its row: "average pain, last 7 days". */
    public String spoken() {
        return spoken;
    }

    /** Returns what 0 means; null where the last scale of the same kind says it for all. */
    public String least() {
        return least;
    }

    /** Returns what 10 means; null where {@link #least()} is. */
    public String most() {
        return most;
    }

    /** Returns the number that was said, or null when not asked. */
    public Integer of(RegionReading reading) {
        return value.apply(reading);
    }
}
