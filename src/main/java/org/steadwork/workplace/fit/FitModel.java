package org.steadwork.workplace.fit;

import java.util.EnumMap;
import java.util.Map;

/**
 * The deviations of one setting of a work place from what a body wants, in mm, and their cost. With P popliteal height,
 * S shoe, E elbow rest height, Y eye height sitting, L buttock–popliteal length, T thigh clearance, k home row above the
 * desk top and t the thickness of the top:
 *
 * <pre>
 * clearance c = (desk − t) − (seat + T)      elbow e = (desk + k) − (seat + E)
 * feet      g = seat − footrest − (P + S)    screen drop h = (seat + Y) − screen top
 * knee gap  q = L − (seat depth − cushion)   distance d = viewing distance      armrest a = armrest − E
 * </pre>
 *
 * It follows that c = e + (E − k − t − T): moving the seat cannot change what elbow and thigh leave to each other.
 * A deviation whose inputs were not looked at is NaN and costs nothing.
 */
public final class FitModel {

    private static final Deviation[] DEVIATIONS = Deviation.values();

    private final Person person;
    private final Body body;
    private final Workstation station;
    private final Targets targets;
    private final Target[] byDeviation;

    public FitModel(Person person, Workstation station, Targets targets) {
        this(person, Body.of(person, targets.allowances().shoe()), station, targets, forLenses(targets, person.lenses()));
    }

    private FitModel(Person person, Body body, Workstation station, Targets targets, Target[] byDeviation) {
        this.person = person;
        this.body = body;
        this.station = station;
        this.targets = targets;
        this.byDeviation = byDeviation;
    }

    private static Target[] forLenses(Targets targets, Lenses lenses) {
        Target[] chosen = new Target[DEVIATIONS.length];
        for (Deviation deviation : DEVIATIONS) {
            chosen[deviation.ordinal()] = targets.of(deviation, lenses);
        }
        return chosen;
    }

    /** Returns the same person at another work place; this model when it is the same one. */
    FitModel at(Workstation other) {
        return other == station ? this : new FitModel(person, body, other, targets, byDeviation);
    }

    /** Returns another body at the same work place. */
    FitModel with(Body other) {
        return new FitModel(person, other, station, targets, byDeviation);
    }

    Body body() {
        return body;
    }

    Person person() {
        return person;
    }

    Workstation station() {
        return station;
    }

    Targets targets() {
        return targets;
    }

    Targets.Obtainable obtainable() {
        return targets.obtainable();
    }

    /** Returns the work place with one travel widened; the same work place when the part has no travel or needs no more. */
    Workstation widenedStation(Part part, Travel offered) {
        Travel travel = station.travelOrNull(part);
        if (travel == null || travel.low() <= offered.low() && travel.high() >= offered.high()) {
            return station;
        }
        return station.with(part, new Travel(Math.min(travel.low(), offered.low()), Math.max(travel.high(), offered.high()), 1));
    }

    Target target(Deviation deviation) {
        return byDeviation[deviation.ordinal()];
    }

    double shoe() {
        return body.shoe();
    }

    /** Returns popliteal height + shoe: where the feet want the seat. */
    double feetHeight() {
        return body.feetHeight();
    }

    double elbow() {
        return body.elbow();
    }

    double eye() {
        return body.eye();
    }

    double thigh() {
        return body.thigh();
    }

    double thighLength() {
        return body.thighLength();
    }

    /** Returns the arm's length kept within the green band; without it today's distance, without that the usual one. */
    double wantedDistance() {
        return wantedDistance(body);
    }

    double wantedDistance(Body of) {
        double today = station.present().distance();
        double wanted = !Double.isNaN(of.reach()) ? of.reach() : !Double.isNaN(today) ? today : targets.allowances().distance();
        return target(Deviation.DISTANCE).green().clip(wanted);
    }

    /** Returns E − k − t − T: the clearance that is left when the keys are at the elbow; NaN if E or T is not known. */
    public double roomBetweenElbowAndThigh() {
        return elbow() - station.homeRow() - station.topThickness() - thigh();
    }

    /** Returns one deviation of a setting, in mm, not rounded; NaN when something it needs was not looked at. */
    public double deviation(Deviation deviation, Settings at) {
        return deviation(deviation, at, body);
    }

    double deviation(Deviation deviation, Settings at, Body of) {
        return switch (deviation) {
            case CLEARANCE -> at.desk() - station.topThickness() - at.seat() - of.thigh();
            case ELBOW -> at.desk() + station.homeRow() - at.seat() - of.elbow();
            case FEET -> at.seat() - at.footrest() - of.feetHeight();
            case SCREEN_DROP -> at.seat() + of.eye() - at.screenTop();
            case KNEE_GAP -> of.thighLength() - at.seatDepth() + at.cushion();
            case DISTANCE -> at.distance();
            case ARMREST -> at.armrest() - of.elbow();
        };
    }

    /** Returns every deviation of a setting; NaN where it was not looked at. */
    public Map<Deviation, Double> deviations(Settings at) {
        Map<Deviation, Double> all = new EnumMap<>(Deviation.class);
        for (Deviation deviation : DEVIATIONS) {
            all.put(deviation, deviation(deviation, at));
        }
        return all;
    }

    public Verdict verdict(Deviation deviation, Settings at) {
        return target(deviation).verdict(deviation(deviation, at));
    }

    /** Returns the sum over all deviations of weight × mm outside green ÷ 10; unknown ones cost nothing. */
    public double cost(Settings at) {
        return cost(at, body);
    }

    double cost(Settings at, Body of) {
        double cost = 0;
        for (Deviation deviation : DEVIATIONS) {
            cost += target(deviation).cost(deviation(deviation, at, of));
        }
        return cost;
    }
}
