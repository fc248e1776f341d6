package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one measurement of the person that would make the result surest. Each measure that carries an error is moved to
 * either end of its 95 % interval; the one for which the proposed setting could be furthest from fitting wins, then the
 * one that leaves most findings open. A thigh that was not looked at comes first, because the hard rule rests on it.
 *
 * @param measure what to measure
 * @param giveOrTake half the 95 % interval of its present value, in mm; NaN when it was not looked at
 * @param atStake how much the cost of the proposed setting could rise: weighted mm outside green ÷ 10
 * @param open today's findings whose verdict differs between the ends of the interval; the clearance also when it differs
 *     whether elbow and thigh can both be in range at all
 * @param whenLow the best setting if the measure were at the low end; empty when it was not looked at
 * @param whenHigh the best setting if it were at the high end
 */
public record Settling(BodyMeasure measure, double giveOrTake, double atStake, List<Deviation> open, Optional<Settings> whenLow,
        Optional<Settings> whenHigh) {

    private static final BodyMeasure[] CANDIDATES = {BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT,
        BodyMeasure.EYE_HEIGHT_SITTING, BodyMeasure.BUTTOCK_POPLITEAL_LENGTH, BodyMeasure.THIGH_CLEARANCE};

    static Optional<Settling> of(FitModel model, Settings best) {
        if (Double.isNaN(model.thigh())) {
            return Optional.of(new Settling(BodyMeasure.THIGH_CLEARANCE, Double.NaN, 0, List.of(), Optional.empty(), Optional.empty()));
        }
        Settling first = null;
        for (BodyMeasure measure : CANDIDATES) {
            Measurement taken = model.person().measure(measure);
            if (taken.known() && taken.how() == How.ESTIMATED && taken.standardError() > 0) {
                Settling settling = moved(model, best, measure, taken);
                boolean matters = settling.atStake > 0 || !settling.open.isEmpty();
                if (matters && (first == null || settling.before(first))) {
                    first = settling;
                }
            }
        }
        return Optional.ofNullable(first);
    }

    private boolean before(Settling other) {
        int byStake = Double.compare(atStake, other.atStake);
        return byStake != 0 ? byStake > 0 : open.size() > other.open.size();
    }

    private static Settling moved(FitModel model, Settings best, BodyMeasure measure, Measurement taken) {
        FitModel low = moved(model, measure, taken, -taken.giveOrTake());
        FitModel high = moved(model, measure, taken, taken.giveOrTake());
        double atStake = Math.max(0, Math.max(low.cost(best), high.cost(best)) - model.cost(best));
        List<Deviation> open = new ArrayList<>();
        Settings today = model.station().present();
        for (Deviation deviation : Deviation.values()) {
            if (low.verdict(deviation, today) != high.verdict(deviation, today)) {
                open.add(deviation);
            }
        }
        boolean roomDiffers = Room.of(low, best).enough() != Room.of(high, best).enough();
        if (roomDiffers && !open.contains(Deviation.CLEARANCE)) {
            open.add(Deviation.CLEARANCE);
        }
        return new Settling(measure, taken.giveOrTake(), atStake, List.copyOf(open), Optional.of(new Scan(low).best()),
                Optional.of(new Scan(high).best()));
    }

    private static FitModel moved(FitModel model, BodyMeasure measure, Measurement taken, double shift) {
        return new FitModel(model.person().with(measure, taken.plus(shift)), model.station(), model.targets());
    }
}
