package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.CombinedError;
import org.steadwork.workplace.fit.HandResult;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Measurement;

/**
 * How sure the proposed settings are, given the errors of the measures they rest on. Errors of two estimates go together
 * (long legs go with a short trunk), so that a height above the floor is surer than its parts.
 */
final class Sureness {

    private final RecordedWorkplace recorded;
    private final WorkplaceContent content;

    Sureness(RecordedWorkplace recorded, WorkplaceContent content) {
        this.recorded = recorded;
        this.content = content;
    }

    /** Says the give or take of seat, keys and screen top when one of them rests on an estimate; empty otherwise. */
    Optional<String> words() {
        if (recorded.fit().isEmpty() || !anyEstimated()) {
            return Optional.empty();
        }
        boolean fromTheFeet = recorded.fit().get().hand().mode() == HandResult.Mode.FEET;
        BodyMeasure seat = fromTheFeet ? BodyMeasure.POPLITEAL_HEIGHT : BodyMeasure.ELBOW_REST_HEIGHT;
        int seatSign = fromTheFeet ? 1 : -1;
        List<String> parts = new ArrayList<>();
        parts.add("seat ± " + Numerals.mm(measure(seat).giveOrTake()));
        if (fromTheFeet) {
            parts.add("keys ± " + Numerals.mm(together(seat, BodyMeasure.ELBOW_REST_HEIGHT, seatSign)));
        }
        if (measure(BodyMeasure.EYE_HEIGHT_SITTING).known()) {
            parts.add("screen top ± " + Numerals.mm(together(seat, BodyMeasure.EYE_HEIGHT_SITTING, seatSign)));
        }
        return Optional.of("Give or take, above the floor: " + String.join(", ", parts) + ". Some of the measures are estimated.");
    }

    private boolean anyEstimated() {
        return List.of(BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT, BodyMeasure.EYE_HEIGHT_SITTING).stream()
                .anyMatch(measure -> measure(measure).how() == How.ESTIMATED);
    }

    /** Returns the give or take of a seat height and a height above it taken together; −1 when the seat falls as its measure grows. */
    private double together(BodyMeasure seat, BodyMeasure above, int seatSign) {
        double sum = CombinedError.ofSum(measure(seat).standardError(), measure(above).standardError(), seatSign * correlation(seat, above));
        return Measurement.NORMAL_975 * sum;
    }

    private double correlation(BodyMeasure one, BodyMeasure other) {
        boolean bothEstimated = measure(one).how() == How.ESTIMATED && measure(other).how() == How.ESTIMATED;
        if (!bothEstimated) {
            return 0;
        }
        BodyGroup group = BodyForm.group(recorded.assessment().caseFile().patient().sex());
        boolean withMass = measure(BodyMeasure.BODY_MASS).known();
        return FitContent.correlation(content.correlations(), group, withMass, BodyDimension.of(one).orElseThrow(),
                BodyDimension.of(other).orElseThrow()).orElse(0.0);
    }

    private Measurement measure(BodyMeasure measure) {
        return recorded.person().measure(measure);
    }
}
