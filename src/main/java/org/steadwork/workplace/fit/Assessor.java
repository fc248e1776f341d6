package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Judges every criterion of the assessment; what was not looked at stays so and is counted as that. */
public final class Assessor {

    private final List<Criterion> criteria;
    private final Targets targets;

    public Assessor(List<Criterion> criteria, Targets targets) {
        this.criteria = List.copyOf(criteria);
        this.targets = targets;
    }

    /**
     * What was found at a work place, ready to be judged.
     *
     * @param tapeError standard error of a length read at the work place, in mm, in [0, 100]
     * @param screenHeight height of what the screen shows, in mm; NaN when not looked at
     * @param measured by key: the ids of measured criteria and the keys that criteria read
     * @param observed by criterion id
     */
    public record Found(Person person, Workstation station, double tapeError, double screenHeight, Map<String, Measurement> measured,
            Map<String, Grade> observed) {

        public Found {
            if (!(tapeError >= 0 && tapeError <= 100)) {
                throw new IllegalArgumentException("The error of a tape reading must be from 0 to 100 mm, but was " + tapeError);
            }
        }
    }

    /** Returns one result for every criterion, in the order of the content; a rule for other lenses is left out. */
    public List<CriterionResult> judge(Found found) {
        FitModel model = new FitModel(found.person(), found.station(), targets);
        List<CriterionResult> results = new ArrayList<>();
        for (Criterion criterion : criteria) {
            if (criterion.lenses() == null || criterion.lenses() == found.person().lenses()) {
                results.add(judge(criterion, found, model));
            }
        }
        lowScreenAccepted(results);
        return List.copyOf(results);
    }

    private CriterionResult judge(Criterion criterion, Found found, FitModel model) {
        return switch (criterion.kind()) {
            case OBSERVED -> CriterionResult.observed(criterion, found.observed().getOrDefault(criterion.id(), Grade.NOT_ASKED));
            case MEASURED -> CriterionResult.measured(criterion,
                    found.measured().getOrDefault(criterion.reads(), Measurement.notLookedAt()), criterion.bands());
            case FIT -> fit(criterion, found, model);
            case GAZE -> CriterionResult.measured(criterion, gaze(found), criterion.bands());
        };
    }

    private CriterionResult fit(Criterion criterion, Found found, FitModel model) {
        Target target = model.target(criterion.deviation());
        Criterion.Bands bands = new Criterion.Bands(target.aim(), target.green(), target.amber());
        double value = model.deviation(criterion.deviation(), found.station().present());
        return Double.isNaN(value) ? CriterionResult.notLookedAt(criterion, bands)
                : CriterionResult.measured(criterion, withError(criterion.deviation(), found, value), bands);
    }

    private static Measurement withError(Deviation deviation, Found found, double value) {
        BodyMeasure body = bodyMeasure(deviation);
        if (body == null) {
            return Measurement.measured(value, found.tapeError());
        }
        Measurement taken = found.person().measure(body);
        return new Measurement(value, taken.how(), CombinedError.ofSum(taken.standardError(), found.tapeError(), 0));
    }

    /** Returns the measure of the body that a deviation rests on; null for the viewing distance. */
    public static BodyMeasure bodyMeasure(Deviation deviation) {
        return switch (deviation) {
            case CLEARANCE -> BodyMeasure.THIGH_CLEARANCE;
            case ELBOW, ARMREST -> BodyMeasure.ELBOW_REST_HEIGHT;
            case FEET -> BodyMeasure.POPLITEAL_HEIGHT;
            case SCREEN_DROP -> BodyMeasure.EYE_HEIGHT_SITTING;
            case KNEE_GAP -> BodyMeasure.BUTTOCK_POPLITEAL_LENGTH;
            case DISTANCE -> null;
        };
    }

    private static Measurement gaze(Found found) {
        Settings at = found.station().present();
        Measurement eye = found.person().measure(BodyMeasure.EYE_HEIGHT_SITTING);
        double drop = at.seat() + eye.value() - at.screenTop() + found.screenHeight() / 2;
        if (Double.isNaN(drop) || Double.isNaN(at.distance())) {
            return Measurement.notLookedAt();
        }
        double degreesPerMm = Math.toDegrees(at.distance() / (at.distance() * at.distance() + drop * drop));
        return new Measurement(Gaze.belowHorizontal(drop, at.distance()), eye.how(), eye.standardError() * degreesPerMm);
    }

    /** For ordinary lenses a low screen is accepted when its centre is seen at a good angle and its top is not above the eye. */
    private static void lowScreenAccepted(List<CriterionResult> results) {
        boolean goodGaze = results.stream()
                .anyMatch(result -> result.criterion().kind() == Criterion.Kind.GAZE && result.verdict() == Verdict.IN_RANGE);
        if (goodGaze) {
            results.replaceAll(result -> result.criterion().deviation() == Deviation.SCREEN_DROP
                    && result.criterion().lenses() == Lenses.SINGLE_OR_NONE && result.value() >= 0 ? result.judged(Verdict.IN_RANGE) : result);
        }
    }
}
