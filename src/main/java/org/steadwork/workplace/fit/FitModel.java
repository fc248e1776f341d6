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

    private final Person person;
    private final Workstation station;
    private final Targets targets;

    public FitModel(Person person, Workstation station, Targets targets) {
        this.person = person;
        this.station = station;
        this.targets = targets;
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
        Travel travel = station.travel(part).orElse(null);
        if (travel == null || travel.low() <= offered.low() && travel.high() >= offered.high()) {
            return station;
        }
        return station.with(part, new Travel(Math.min(travel.low(), offered.low()), Math.max(travel.high(), offered.high()), 1));
    }

    Target target(Deviation deviation) {
        return targets.of(deviation, person.lenses());
    }

    double popliteal() {
        return person.value(BodyMeasure.POPLITEAL_HEIGHT);
    }

    double shoe() {
        double measured = person.value(BodyMeasure.SHOE);
        return Double.isNaN(measured) ? targets.allowances().shoe() : measured;
    }

    /** Returns popliteal height + shoe: where the feet want the seat. */
    double feetHeight() {
        return popliteal() + shoe();
    }

    double elbow() {
        return person.value(BodyMeasure.ELBOW_REST_HEIGHT);
    }

    double eye() {
        return person.value(BodyMeasure.EYE_HEIGHT_SITTING);
    }

    double thigh() {
        return person.value(BodyMeasure.THIGH_CLEARANCE);
    }

    double thighLength() {
        return person.value(BodyMeasure.BUTTOCK_POPLITEAL_LENGTH);
    }

    /** Returns the arm's length kept within the green band; without it today's distance, without that the usual one. */
    double wantedDistance() {
        double reach = person.value(BodyMeasure.ARM_REACH);
        double today = station.present().distance();
        double wanted = !Double.isNaN(reach) ? reach : !Double.isNaN(today) ? today : targets.allowances().distance();
        return target(Deviation.DISTANCE).green().clip(wanted);
    }

    /** Returns E − k − t − T: the clearance that is left when the keys are at the elbow; NaN if E or T is not known. */
    public double roomBetweenElbowAndThigh() {
        return elbow() - station.homeRow() - station.topThickness() - thigh();
    }

    /** Returns one deviation of a setting, in mm, not rounded; NaN when something it needs was not looked at. */
    public double deviation(Deviation deviation, Settings at) {
        return switch (deviation) {
            case CLEARANCE -> at.desk() - station.topThickness() - at.seat() - thigh();
            case ELBOW -> at.desk() + station.homeRow() - at.seat() - elbow();
            case FEET -> at.seat() - at.footrest() - feetHeight();
            case SCREEN_DROP -> at.seat() + eye() - at.screenTop();
            case KNEE_GAP -> thighLength() - at.seatDepth() + at.cushion();
            case DISTANCE -> at.distance();
            case ARMREST -> at.armrest() - elbow();
        };
    }

    /** Returns every deviation of a setting; NaN where it was not looked at. */
    public Map<Deviation, Double> deviations(Settings at) {
        Map<Deviation, Double> all = new EnumMap<>(Deviation.class);
        for (Deviation deviation : Deviation.values()) {
            all.put(deviation, deviation(deviation, at));
        }
        return all;
    }

    public Verdict verdict(Deviation deviation, Settings at) {
        return target(deviation).verdict(deviation(deviation, at));
    }

    /** Returns the sum over all deviations of weight × mm outside green ÷ 10; unknown ones cost nothing. */
    public double cost(Settings at) {
        double cost = 0;
        for (Deviation deviation : Deviation.values()) {
            cost += target(deviation).cost(deviation(deviation, at));
        }
        return cost;
    }
}
