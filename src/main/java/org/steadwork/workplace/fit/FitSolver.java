package org.steadwork.workplace.fit;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Works out how a work place should be set for a person, and what would have to be asked for. */
public final class FitSolver {

    private FitSolver() {
    }

    /**
     * Solves the fit of a seated work place; a few microseconds without a misfit, some tenths of a millisecond with equipment to try.
     *
     * @throws IllegalArgumentException when something it cannot do without was not looked at, see {@link #missing}
     * Source: order of adjustment and formulas as in {@link FitModel}; targets, bands and weights are content.
     */
    public static FitResult solve(Person person, Workstation station, Targets targets) {
        requireEnough(person, station);
        FitModel model = new FitModel(person, station, targets);
        Settings best = new Scan(model).best();
        Objective objective = Objective.of(model, best);
        EquipmentSearch search = new EquipmentSearch(model, best);
        Optional<Room> room = Double.isNaN(model.thigh()) ? Optional.empty() : Optional.of(Room.of(model, best));
        return new FitResult(model.deviations(station.present()), best, model.deviations(best), objective.contact() == 0,
                AdjustmentStep.from(model, best), new HandMethod(model).result(), search.oneByOne(), search.shortestList(), room,
                Standing.of(model), model.cost(station.present()), model.cost(best), objective);
    }

    static void requireEnough(Person person, Workstation station) {
        Missing missing = missing(person, station);
        if (!missing.none()) {
            throw new IllegalArgumentException("Cannot be worked out without " + missing);
        }
    }

    /** Returns what must still be looked at before the fit can be worked out. */
    public static Missing missing(Person person, Workstation station) {
        Set<BodyMeasure> measures = EnumSet.noneOf(BodyMeasure.class);
        for (BodyMeasure needed : new BodyMeasure[] {BodyMeasure.POPLITEAL_HEIGHT, BodyMeasure.ELBOW_REST_HEIGHT}) {
            if (!person.measure(needed).known()) {
                measures.add(needed);
            }
        }
        Set<Part> parts = EnumSet.noneOf(Part.class);
        for (Part needed : new Part[] {Part.SEAT, Part.DESK}) {
            if (station.travel(needed).isEmpty()) {
                parts.add(needed);
            }
        }
        return new Missing(measures, parts);
    }

    /** What the fit cannot do without and was not looked at. */
    public record Missing(Set<BodyMeasure> measures, Set<Part> parts) {

        public boolean none() {
            return measures.isEmpty() && parts.isEmpty();
        }
    }
}
