package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fits one drawn body after the other and counts what comes out. */
final class SurenessRun {

    private static final double HAIR = 1e-6;
    private static final Deviation[] DEVIATIONS = Deviation.values();
    private static final Part[] PARTS = Part.values();

    private final FitModel model;
    private final FitResult fit;
    private final BodyDraws distribution;
    private final Body[] bodies;
    private final double[] costs;

    SurenessRun(FitModel model, FitResult fit, ErrorCorrelations together, int draws, long seed) {
        this.model = model;
        this.fit = fit;
        this.distribution = BodyDraws.of(model, together);
        this.bodies = distribution.draw(draws, seed);
        this.costs = new double[draws];
    }

    Sureness result() {
        double[][] settings = new double[PARTS.length][bodies.length];
        int serves = 0;
        Scan scan = new Scan(model);
        for (int n = 0; n < bodies.length; n++) {
            Settings best = scan.best(bodies[n]);
            costs[n] = model.cost(best, bodies[n]);
            serves += model.deviation(Deviation.CLEARANCE, best, bodies[n]) < 0 ? 0 : 1;
            for (Part part : PARTS) {
                settings[part.ordinal()][n] = best.value(part);
            }
        }
        Map<Part, Spread> spreads = new EnumMap<>(Part.class);
        for (Part part : PARTS) {
            if (!Double.isNaN(fit.best().value(part))) {
                spreads.put(part, Spread.of(fit.best().value(part), settings[part.ordinal()]));
            }
        }
        return new Sureness(bodies.length, spreads, judged(model.station().present()), judged(fit.best()), share(serves), equipment(),
                Settling.of(model, fit.best(), distribution, bodies));
    }

    private double share(int count) {
        return (double) count / bodies.length;
    }

    private Map<Deviation, Sureness.Judged> judged(Settings at) {
        Map<Deviation, Sureness.Judged> judged = new EnumMap<>(Deviation.class);
        double[] off = new double[bodies.length];
        for (Deviation deviation : DEVIATIONS) {
            double value = model.deviation(deviation, at);
            if (!Double.isNaN(value)) {
                int[] counts = new int[Verdict.values().length];
                for (int n = 0; n < bodies.length; n++) {
                    off[n] = model.deviation(deviation, at, bodies[n]);
                    counts[model.target(deviation).verdict(off[n]).ordinal()]++;
                }
                Map<Verdict, Double> shares = new EnumMap<>(Verdict.class);
                for (Verdict verdict : Verdict.values()) {
                    shares.put(verdict, share(counts[verdict.ordinal()]));
                }
                judged.put(deviation, new Sureness.Judged(Spread.of(value, off), model.verdict(deviation, at), shares));
            }
        }
        return judged;
    }

    private List<Sureness.Recommended> equipment() {
        List<EquipmentGain> answers = new ArrayList<>(fit.gains());
        Optional<EquipmentGain> list = fit.shortestList().filter(gain -> gain.items().size() > 1);
        list.ifPresent(answers::add);
        List<Sureness.Recommended> equipment = new ArrayList<>();
        answers.forEach(gain -> equipment.add(recommended(gain)));
        return List.copyOf(equipment);
    }

    /** What is bought stays as it is whatever the body is; only the settings follow. */
    private Sureness.Recommended recommended(EquipmentGain gain) {
        FitModel with = model.at(gain.station());
        Scan scan = new Scan(with);
        int needed = 0;
        int helps = 0;
        int suffices = 0;
        for (int n = 0; n < bodies.length; n++) {
            if (costs[n] > HAIR) {
                double remains = with.cost(scan.bestByCost(bodies[n]), bodies[n]);
                needed++;
                helps += remains < costs[n] - HAIR ? 1 : 0;
                suffices += remains > HAIR ? 0 : 1;
            } else {
                suffices++;
            }
        }
        return new Sureness.Recommended(gain.items().stream().map(EquipmentGain.Item::equipment).toList(), share(needed), share(helps), share(suffices));
    }
}
