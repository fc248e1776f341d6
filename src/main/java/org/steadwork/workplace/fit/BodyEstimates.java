package org.steadwork.workplace.fit;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The equations from which body dimensions are estimated. */
public final class BodyEstimates {

    private final Map<Key, Regression> equations = new HashMap<>();

    public BodyEstimates(Collection<Regression> equations) {
        for (Regression equation : equations) {
            Key key = new Key(equation.group(), equation.dimension(), equation.withMass());
            if (this.equations.put(key, equation) != null) {
                throw new IllegalArgumentException("There are two equations for " + key);
            }
        }
    }

    /**
     * Estimates a dimension from stature, and from body mass as well when it is given.
     *
     * @param statureMm barefoot, mm; outside the survey's range the call is refused with {@link OutsideSurvey}
     * @param massKg kg, or empty
     */
    public BodyEstimate estimate(BodyDimension dimension, BodyGroup group, double statureMm, OptionalDouble massKg) {
        Key key = new Key(group, dimension, massKg.isPresent());
        Regression equation = equations.get(key);
        if (equation == null) {
            throw new IllegalArgumentException("There is no equation for " + key);
        }
        return equation.estimate(statureMm, massKg.orElse(Double.NaN));
    }

    /** Returns the band in which a typed measure needs no second look; empty when stature says nothing about it. */
    public Optional<Band> plausible(BodyMeasure measure, BodyGroup group, double statureMm) {
        Optional<BodyDimension> dimension = BodyDimension.of(measure);
        if (dimension.isEmpty()) {
            return Optional.empty();
        }
        Regression equation = equations.get(new Key(group, dimension.get(), false));
        if (equation == null || !equation.stature().contains(statureMm)) {
            return Optional.empty();
        }
        return Optional.of(equation.estimate(statureMm, Double.NaN).plausible());
    }

    private record Key(BodyGroup group, BodyDimension dimension, boolean withMass) {
    }
}
