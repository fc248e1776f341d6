package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one measurement of the person that would make a fit surest. Each measure that carries an error worth removing is taken
 * as known, in turn, at values spread evenly over its distribution (conditional re-draw: the other measures are drawn again
 * given that value), the settings are chosen anew for it, and the cost that is then left on average is compared with that of
 * settling nothing. The measure that takes away most wins; where two take away as much, the one that settles more of today's
 * findings. A thigh that was not looked at comes first, because the hard rule rests on it. That a tape has an error too is
 * not counted, so the gain is an upper bound.
 *
 * @param measure what to measure
 * @param giveOrTake half the 95 % interval of its present value, in mm; NaN when it was not looked at
 * @param expectedCost what the proposed settings leave on average over the draws: weighted mm outside green ÷ 10
 * @param expectedCostAfter the same when this measure is known and the settings follow; NaN when it was not looked at
 * @param open today's findings whose verdict differs between the ends of the interval; the clearance also when it differs
 *     whether elbow and thigh can both be in range at all
 * @param whenLow the best setting if the measure were at the low end; empty when it was not looked at
 * @param whenHigh the best setting if it were at the high end
 */
public record Settling(BodyMeasure measure, double giveOrTake, double expectedCost, double expectedCostAfter, List<Deviation> open,
        Optional<Settings> whenLow, Optional<Settings> whenHigh) {

    /** A measure taken surer than this, 95 % give or take in mm, is not asked for again: a careful reading is no surer. */
    private static final double CAREFUL_READING = 12;
    private static final int POINTS = 15;
    private static final int DRAWS_A_POINT = 60;
    /** A smaller gain in cost is not worth a measurement: half a millimetre of a weight of 1. */
    private static final double WORTH_MEASURING = 0.05;

    /** Returns how much cost the measurement takes away on average. */
    public double gain() {
        return expectedCost - expectedCostAfter;
    }

    static Optional<Settling> of(FitModel model, Settings proposed, BodyDraws distribution, Body[] bodies) {
        double expected = average(model, proposed, bodies);
        if (Double.isNaN(model.thigh())) {
            return Optional.of(new Settling(BodyMeasure.THIGH_CLEARANCE, Double.NaN, expected, Double.NaN, List.of(), Optional.empty(), Optional.empty()));
        }
        Settling first = null;
        Scan scan = new Scan(model);
        for (int i = 0; i < BodyDraws.MEASURES.length; i++) {
            Measurement taken = model.person().measure(BodyDraws.MEASURES[i]);
            if (taken.standardError() > 0 && (taken.how() == How.ESTIMATED || taken.giveOrTake() > CAREFUL_READING)) {
                Settling settling = known(model, proposed, distribution, bodies, i, scan);
                boolean matters = settling.gain() > WORTH_MEASURING || !settling.open.isEmpty();
                if (matters && (first == null || settling.before(first))) {
                    first = settling;
                }
            }
        }
        return Optional.ofNullable(first);
    }

    private boolean before(Settling other) {
        double difference = gain() - other.gain();
        return Math.abs(difference) > WORTH_MEASURING ? difference > 0 : open.size() > other.open.size();
    }

    private static double average(FitModel model, Settings at, Body[] bodies) {
        double sum = 0;
        for (Body body : bodies) {
            sum += model.cost(at, body);
        }
        return sum / bodies.length;
    }

    private static Settling known(FitModel model, Settings proposed, BodyDraws distribution, Body[] bodies, int measure, Scan scan) {
        int used = Math.min(bodies.length, DRAWS_A_POINT);
        double before = 0;
        double after = 0;
        double[] sorted = BodyDraws.sorted(bodies, measure);
        for (int point = 0; point < POINTS; point++) {
            double found = Spread.percentile(sorted, (point + 0.5) / POINTS);
            Settings chosen = scan.best(distribution.expected(measure, found));
            double asProposed = 0;
            double asChosen = 0;
            for (int n = 0; n < used; n++) {
                Body drawn = distribution.knowing(bodies[n], measure, found);
                asProposed += model.cost(proposed, drawn);
                asChosen += model.cost(chosen, drawn);
            }
            before += asProposed;
            after += Math.min(asProposed, asChosen);
        }
        int tried = POINTS * used;
        double giveOrTake = Measurement.NORMAL_975 * distribution.error(measure);
        FitModel low = model.with(distribution.expected(measure, distribution.value(measure) - giveOrTake));
        FitModel high = model.with(distribution.expected(measure, distribution.value(measure) + giveOrTake));
        return new Settling(BodyDraws.MEASURES[measure], giveOrTake, before / tried, after / tried, open(model, proposed, low, high),
                Optional.of(scan.best(low.body())), Optional.of(scan.best(high.body())));
    }

    private static List<Deviation> open(FitModel model, Settings proposed, FitModel low, FitModel high) {
        List<Deviation> open = new ArrayList<>();
        Settings today = model.station().present();
        for (Deviation deviation : Deviation.values()) {
            if (low.verdict(deviation, today) != high.verdict(deviation, today)) {
                open.add(deviation);
            }
        }
        boolean roomDiffers = Room.of(low, proposed).enough() != Room.of(high, proposed).enough();
        if (roomDiffers && !open.contains(Deviation.CLEARANCE)) {
            open.add(Deviation.CLEARANCE);
        }
        return List.copyOf(open);
    }
}
