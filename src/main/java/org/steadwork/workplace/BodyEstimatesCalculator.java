package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyEstimate;
import org.steadwork.workplace.fit.BodyMeasure;

/** Seated body dimensions estimated from stature, on the Bench. */
@ApplicationScoped
class BodyEstimatesCalculator implements Calculator {

    @Inject
    WorkplaceContent content;

    @Override
    public String key() {
        return "body-estimates";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.WORK_PLACE;
    }

    @Override
    public String title() {
        return "Body sizes from stature";
    }

    @Override
    public String question() {
        return "What would the seated sizes be, and how far off may that be?";
    }

    @Override
    public List<String> limits() {
        return List.of("For a first setting and for catching slips of the tape; measure before anything is ordered.",
                "Stature says almost nothing about elbow height above the seat.",
                "Holds for people like those of the survey: soldiers aged 17 to 58; other groups lie up to 15 to 40 mm off at the same stature.",
                "Not for pregnancy, wheelchair users or children; outside the survey's range nothing is estimated.");
    }

    @Override
    public List<Input> inputs() {
        MeasureText stature = content.text(BodyMeasure.STATURE);
        Input mass = new BodyInputs(content).measure(BodyMeasure.BODY_MASS);
        return List.of(BodyInputs.sex().example("male"), Input.number(stature.key(), stature.label(), stature.unit(), stature.range().low(),
                stature.range().high(), 1).hint(stature.how()).example(1760), mass);
    }

    @Override
    public String standing() {
        return "Checked on 192 worked values and, ten-fold, on the survey's own people: 94 to 96 % lie within the intervals.";
    }

    @Override
    public List<String> sources() {
        return List.of("Our regressions of the public individual data of Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, 2014");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        BodyInputs body = new BodyInputs(content);
        BenchAnswer answer = BenchAnswer.of("Estimates with the interval that holds 95 of 100 such people");
        List<Map<String, Object>> estimates = new ArrayList<>();
        for (BodyDimension dimension : BodyDimension.values()) {
            BodyEstimate estimate = body.estimate(dimension, given);
            String name = label(dimension);
            answer.step(name, "linear equation on stature" + (given.has("body_mass") ? " and body mass" : "") + "; 95 % prediction interval "
                    + Numerals.number(estimate.low(), 0) + " to " + Numerals.number(estimate.high(), 0) + " mm, ± "
                    + Numerals.number(estimate.halfWidth95(), 0) + " mm", Numerals.number(estimate.value(), 0), "mm");
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("dimension", FitContent.key(dimension));
            row.put("value", estimate.value());
            row.put("low", estimate.low());
            row.put("high", estimate.high());
            row.put("give_or_take", estimate.halfWidth95());
            row.put("standard_error", estimate.standardError());
            estimates.add(row);
            if (dimension == BodyDimension.POPLITEAL_HEIGHT || dimension == BodyDimension.ELBOW_REST_HEIGHT
                    || dimension == BodyDimension.EYE_HEIGHT_SITTING) {
                answer.headline(name, Numerals.number(estimate.value(), 0) + " ± " + Numerals.number(estimate.halfWidth95(), 0), "mm");
            }
        }
        return answer.note("Sitting erect and barefoot. For sitting as people do, take " + Numerals.mm(content.targets().allowances().slump())
                + " off the height of the eye; for seat height, add the shoe.").result("unit", "mm").result("estimates", estimates);
    }

    private static String label(BodyDimension dimension) {
        return WorkplaceWords.capital(dimension.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
