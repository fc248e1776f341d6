package org.steadwork.workplace;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steadwork.people.Sex;
import org.steadwork.web.Form;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyEstimate;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.OutsideSurvey;
import org.steadwork.workplace.fit.Readings;

/** Reads the measures of the person: each typed, estimated from stature, or left; what is unlikely is asked again. */
final class BodyForm {

    static final String ESTIMATE = "_estimate";
    static final String TWICE = "_twice";
    private static final String UNLIKELY = "Unlikely";

    private final WorkplaceContent content;
    private final BodyGroup group;

    BodyForm(WorkplaceContent content, Sex sex) {
        this.content = content;
        this.group = group(sex);
    }

    static BodyGroup group(Sex sex) {
        return switch (sex) {
            case FEMALE -> BodyGroup.FEMALE;
            case MALE -> BodyGroup.MALE;
            case NOT_RECORDED -> BodyGroup.BALANCED;
        };
    }

    Map<String, Taken> read(Form form) {
        Map<String, Taken> taken = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            read(form, measure).ifPresent(value -> taken.put(FitContent.key(measure), value));
        }
        return taken;
    }

    private Optional<Taken> read(Form form, BodyMeasure measure) {
        MeasureText text = content.text(measure);
        String key = text.key();
        List<BigDecimal> typed = new RepeatedReadings(text).read(form);
        if (!typed.isEmpty()) {
            Measurement median = Readings.of(text.giveOrTake() / Measurement.NORMAL_975, typed.stream().mapToDouble(BigDecimal::doubleValue).toArray());
            askAgainIfUnlikely(form, measure, median.value(), typed);
            return Optional.of(new Taken(BigDecimal.valueOf(median.value()), text.unit(), How.MEASURED, rounded(median.standardError(), 4),
                    form.ticked(key + TWICE), typed.size() > 1 ? typed : List.of()));
        }
        return form.error(key) == null && form.ticked(key + ESTIMATE) ? estimated(form, measure, text) : Optional.empty();
    }

    private Optional<Taken> estimated(Form form, BodyMeasure measure, MeasureText text) {
        OptionalDouble stature = number(form, BodyMeasure.STATURE);
        if (stature.isEmpty()) {
            form.error(text.key(), text.label() + " can be estimated only when stature is measured. Enter the stature, or measure this one.");
            return Optional.empty();
        }
        try {
            BodyEstimate estimate = estimate(measure, stature.getAsDouble(), number(form, BodyMeasure.BODY_MASS)).orElseThrow();
            return Optional.of(new Taken(rounded(estimate.value() - slump(measure), 1), text.unit(), How.ESTIMATED,
                    rounded(estimate.predictionError(), 4), false));
        } catch (OutsideSurvey outside) {
            form.error(text.key(), outside.getMessage() + ".");
            return Optional.empty();
        }
    }

    /** Returns the estimate of a measure as it is taken (an eye height still erect); empty when stature says nothing about it. */
    Optional<BodyEstimate> estimate(BodyMeasure measure, double stature, OptionalDouble mass) {
        return BodyDimension.of(measure).map(dimension -> content.estimates().estimate(dimension, group, stature, mass));
    }

    /** An estimated eye height is for sitting erect; what people lose by sitting as they do is taken off. */
    double slump(BodyMeasure measure) {
        return measure == BodyMeasure.EYE_HEIGHT_SITTING ? content.targets().allowances().slump() : 0;
    }

    private void askAgainIfUnlikely(Form form, BodyMeasure measure, double typed, List<BigDecimal> readings) {
        String key = FitContent.key(measure);
        OptionalDouble stature = number(form, BodyMeasure.STATURE);
        if (stature.isEmpty() || form.ticked(key + TWICE)) {
            return;
        }
        Optional<Band> plausible = content.estimates().plausible(measure, group, stature.getAsDouble());
        if (plausible.isEmpty() || plausible.get().contains(typed + slump(measure))) {
            return;
        }
        // two readings that agree in being unlikely are the second measurement that would be asked for
        if (readings.stream().filter(reading -> !plausible.get().contains(reading.doubleValue() + slump(measure))).count() < 2) {
            form.error(key, UNLIKELY + " for a stature of " + Numerals.mm(stature.getAsDouble()) + ": "
                    + Numerals.mm(plausible.get().low() - slump(measure)) + " to " + Numerals.mm(plausible.get().high() - slump(measure))
                    + " would be usual. You entered " + Numerals.mm(typed) + ". Measure again, or tick that it was measured twice.");
        }
    }

    /** Tells whether to offer the tick that says it was measured twice. */
    boolean asksTwice(Form form, BodyMeasure measure) {
        String error = form.error(FitContent.key(measure));
        return form.ticked(FitContent.key(measure) + TWICE) || error != null && error.startsWith(UNLIKELY);
    }

    /** Returns the number typed for a measure, if it is one within its range; notes no error. */
    OptionalDouble number(Form form, BodyMeasure measure) {
        return new RepeatedReadings(content.text(measure)).median(form);
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }
}
