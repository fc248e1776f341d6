package org.steadwork.workplace;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyEstimate;
import org.steadwork.workplace.fit.BodyEstimates;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.OutsideSurvey;
import org.steadwork.workplace.fit.Person;

/** A person as a calculator asks for one: measures typed, or estimated from stature where they were left out. */
final class BodyInputs {

    static final String SEX = "sex";
    static final String LENSES = "lenses";
    private static final String STATURE = FitContent.key(BodyMeasure.STATURE);
    private static final String MASS = FitContent.key(BodyMeasure.BODY_MASS);
    /** Without these two nothing is worked out; the others are estimated as well where stature is given. */
    private static final List<BodyMeasure> ESTIMATED = List.of(BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT,
            BodyMeasure.EYE_HEIGHT_SITTING, BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE);

    private final WorkplaceContent content;

    BodyInputs(WorkplaceContent content) {
        this.content = content;
    }

    /** Asks for a measure of the person, with its landmark. */
    Input measure(BodyMeasure measure) {
        MeasureText text = content.text(measure);
        return Input.number(text.key(), text.label(), text.unit(), text.range().low(), text.range().high(), 1).hint(text.how()).optional();
    }

    List<Input> measures(BodyMeasure... measures) {
        List<Input> inputs = new ArrayList<>();
        for (BodyMeasure measure : measures) {
            inputs.add(measure(measure));
        }
        return inputs;
    }

    static Input sex() {
        return Input.choice(SEX, "Sex, for the estimates", List.of(new Choice("female", "Female"), new Choice("male", "Male"),
                new Choice("balanced", "Not recorded", "Equations that weight women and men equally"))).startsAt("balanced");
    }

    static Input lenses() {
        return Input.choice(LENSES, "Lenses worn at the screen", List.of(new Choice("single_or_none", "Single-vision or none"),
                new Choice("progressive", "Progressive, bifocal or trifocal"))).startsAt("single_or_none");
    }

    /** Reads a person; what was not typed is estimated where stature was, and otherwise stays not looked at. */
    Person person(Inputs given) {
        Map<BodyMeasure, Measurement> measures = new EnumMap<>(BodyMeasure.class);
        for (BodyMeasure measure : BodyMeasure.values()) {
            String key = FitContent.key(measure);
            if (given.has(key)) {
                measures.put(measure, content.measured(key, BigDecimal.valueOf(given.number(key))).measurement());
            } else if (ESTIMATED.contains(measure) && given.has(STATURE)) {
                measures.put(measure, estimated(measure, given));
            }
        }
        return Person.of(measures, given.has(LENSES) ? given.choice(LENSES, Lenses.class) : Lenses.SINGLE_OR_NONE);
    }

    BodyGroup group(Inputs given) {
        return given.choice(SEX, BodyGroup.class);
    }

    private Measurement estimated(BodyMeasure measure, Inputs given) {
        BodyEstimate estimate = estimate(BodyDimension.of(measure).orElseThrow(), given);
        double slump = measure == BodyMeasure.EYE_HEIGHT_SITTING ? content.targets().allowances().slump() : 0;
        return Measurement.estimated(estimate.value() - slump, estimate.predictionError());
    }

    /** Returns an estimate; a stature or body mass outside the survey is refused at its field. */
    BodyEstimate estimate(BodyDimension dimension, Inputs given) {
        BodyEstimates estimates = content.estimates();
        double stature = given.number(STATURE);
        OptionalDouble mass = given.has(MASS) ? OptionalDouble.of(given.number(MASS)) : OptionalDouble.empty();
        try {
            estimates.estimate(dimension, group(given), stature, OptionalDouble.empty());
        } catch (OutsideSurvey outside) {
            throw CalculatorRefusal.at(given.path(STATURE), outside.getMessage() + ".", given.decimal(STATURE).toPlainString(), "a stature within the survey");
        }
        try {
            return estimates.estimate(dimension, group(given), stature, mass);
        } catch (OutsideSurvey outside) {
            throw CalculatorRefusal.at(given.path(MASS), outside.getMessage() + ".", given.decimal(MASS).toPlainString(), "a body mass within the survey");
        }
    }
}
