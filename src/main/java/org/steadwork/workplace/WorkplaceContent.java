package org.steadwork.workplace;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.content.ReadEarly;
import org.steadwork.workplace.fit.BodyEstimates;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.ErrorCorrelations;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Targets;

/** The content about work places, read once; a wrong entry stops the start. */
@Startup
@Singleton
public class WorkplaceContent implements ReadEarly {

    private final Targets targets = FitContent.targets();
    private final BodyEstimates estimates = AnthropometryContent.estimates();
    private final Map<BodyMeasure, MeasureText> measures = FitContent.measures();
    private final Map<BodyGroup, Map<Boolean, ErrorCorrelations>> correlations = AnthropometryContent.correlations();
    private final Map<String, PopulationText> populations = AnthropometryContent.populations();
    private final Map<StationMeasure, StationText> station = StationContent.measures();
    private final double stationGiveOrTake = StationContent.giveOrTake();
    private final Map<String, Criterion> criteria = new LinkedHashMap<>();

    WorkplaceContent() {
        FitContent.criteria().forEach(criterion -> criteria.put(criterion.id(), criterion));
    }

    public List<Criterion> criteria() {
        return List.copyOf(criteria.values());
    }

    /** Returns the criterion with this id, unless the content no longer has it. */
    public Optional<Criterion> criterion(String id) {
        return Optional.ofNullable(criteria.get(id));
    }

    public Targets targets() {
        return targets;
    }

    public BodyEstimates estimates() {
        return estimates;
    }

    MeasureText text(BodyMeasure measure) {
        return measures.get(measure);
    }

    StationText text(StationMeasure measure) {
        return station.get(measure);
    }

    /** Returns how the errors of estimates go together, made from stature alone or from body mass as well. */
    public ErrorCorrelations correlations(BodyGroup group, boolean withMass) {
        return correlations.get(group).get(withMass);
    }

    /** Returns the populations that furniture can be tried on, by their ids. */
    public Map<String, PopulationText> populations() {
        return Collections.unmodifiableMap(populations);
    }

    /** Half the 95 % interval of a reading at the work place, in mm. */
    double stationGiveOrTake() {
        return stationGiveOrTake;
    }

    /**
     * Makes a measured value of a key, with the unit and the reading error that the content gives it.
     *
     * @param key a measure of the person, a reading at the work place (both in lower case), or the id of a measured criterion
     * @throws IllegalArgumentException for any other key
     */
    public Taken measured(String key, BigDecimal amount) {
        for (MeasureText text : measures.values()) {
            if (text.key().equals(key)) {
                return new Taken(amount, text.unit(), How.MEASURED, standardError(text.giveOrTake()), false);
            }
        }
        for (StationText text : station.values()) {
            if (text.key().equals(key)) {
                return new Taken(amount, text.unit(), How.MEASURED, standardError(stationGiveOrTake), false);
            }
        }
        Criterion criterion = criteria.get(key);
        if (criterion == null || criterion.kind() != Criterion.Kind.MEASURED) {
            throw new IllegalArgumentException("Nothing is measured under '" + key + "'");
        }
        return new Taken(amount, criterion.unit(), How.MEASURED, BigDecimal.ZERO, false);
    }

    static BigDecimal standardError(double giveOrTake) {
        return BigDecimal.valueOf(giveOrTake / Measurement.NORMAL_975).setScale(4, RoundingMode.HALF_UP);
    }
}
