package org.steadwork.workplace.fit;

import java.util.EnumMap;
import java.util.Map;

/**
 * The body that the work place should fit: each measure with how it was obtained; a missing measure was not looked at.
 * Eye height is as the person really sits (relaxed): take the slump off an erect value before.
 */
public final class Person {

    private final Map<BodyMeasure, Measurement> measures;
    private final Lenses lenses;

    private Person(Map<BodyMeasure, Measurement> measures, Lenses lenses) {
        this.measures = new EnumMap<>(BodyMeasure.class);
        this.measures.putAll(measures);
        this.lenses = lenses;
        this.measures.forEach((measure, taken) -> {
            if (taken.known() && !(taken.value() > 0 && taken.value() < 3000 || measure == BodyMeasure.SHOE && taken.value() == 0)) {
                throw new IllegalArgumentException(measure + " must be between 0 and 3000, but was " + taken.value());
            }
        });
    }

    public static Person of(Map<BodyMeasure, Measurement> measures, Lenses lenses) {
        return new Person(measures, lenses);
    }

    public Lenses lenses() {
        return lenses;
    }

    public Measurement measure(BodyMeasure measure) {
        return measures.getOrDefault(measure, Measurement.notLookedAt());
    }

    /** Returns the value, or NaN when it was not looked at. */
    double value(BodyMeasure measure) {
        return measure(measure).value();
    }

    /** Returns this person with one measure replaced. */
    public Person with(BodyMeasure measure, Measurement taken) {
        Map<BodyMeasure, Measurement> changed = new EnumMap<>(BodyMeasure.class);
        changed.putAll(measures);
        changed.put(measure, taken);
        return new Person(changed, lenses);
    }
}
