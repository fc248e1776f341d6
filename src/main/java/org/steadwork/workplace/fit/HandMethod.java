package org.steadwork.workplace.fit;

/**
 * The way a person sets a desk by hand: seat from the feet where the desk can follow, from the desk where it cannot, and
 * everything else after the seat. Screen and footrest are given as wanted, whether or not the equipment reaches.
 * Source: order of adjustment as commonly taught (CCOHS, OSHA, University of Melbourne guidance); the numbers are targets.
 */
final class HandMethod {

    private final FitModel model;
    private final Travel seat;
    private final Travel desk;

    HandMethod(FitModel model) {
        this.model = model;
        this.seat = model.station().travel(Part.SEAT).orElseThrow();
        this.desk = model.station().travel(Part.DESK).orElseThrow();
    }

    HandResult result() {
        double feet = model.feetHeight();
        double fromFeet = seat.clip(feet);
        double deskFromFeet = fromFeet + model.elbow() - model.station().homeRow();
        if (!desk.isFixed() && desk.clip(deskFromFeet) == deskFromFeet) {
            return finish(HandResult.Mode.FEET, fromFeet, deskFromFeet);
        }
        double top = desk.clip(deskFromFeet);
        double seatFromDesk = top + model.station().homeRow() - model.elbow();
        return seatFromDesk > feet
                ? finish(HandResult.Mode.ELBOW, seat.clip(seatFromDesk), top)
                : finish(HandResult.Mode.FEET_LOW_DESK, fromFeet, top);
    }

    private HandResult finish(HandResult.Mode mode, double height, double top) {
        double hanging = height - model.feetHeight();
        double footrest = hanging > model.targets().allowances().footrestAbove() ? hanging : 0;
        Settings present = model.station().present();
        double depth = model.station().travel(Part.SEAT_DEPTH)
                .map(travel -> unlessUnknown(travel, model.thighLength() - model.target(Deviation.KNEE_GAP).aim(), present.seatDepth()))
                .orElse(present.seatDepth());
        double armrest = model.station().travel(Part.ARMREST)
                .map(travel -> unlessUnknown(travel, model.elbow(), present.armrest())).orElse(present.armrest());
        double screenTop = height + model.eye() - model.target(Deviation.SCREEN_DROP).aim();
        Settings set = new Settings(depth, present.cushion(), height, footrest, top, armrest, screenTop, model.wantedDistance());
        return new HandResult(mode, set, model.deviations(set), riser(set), screenTooHighBy(set), deskRaise(mode, set),
                keyboardLowering(set), cushion(set), seatTooShort(set));
    }

    private static double unlessUnknown(Travel travel, double wanted, double present) {
        return Double.isNaN(wanted) ? present : travel.clip(wanted);
    }

    private double riser(Settings set) {
        double above = set.screenTop() - set.desk();
        return model.station().travel(Part.SCREEN_TOP).map(travel -> Math.max(0, above - travel.high())).orElse(0.0);
    }

    private double screenTooHighBy(Settings set) {
        double above = set.screenTop() - set.desk();
        return model.station().travel(Part.SCREEN_TOP).map(travel -> Math.max(0, travel.low() - above)).orElse(0.0);
    }

    private double deskRaise(HandResult.Mode mode, Settings set) {
        double elbow = model.deviation(Deviation.ELBOW, set);
        double clearance = model.deviation(Deviation.CLEARANCE, set);
        double wanted = model.target(Deviation.CLEARANCE).green().low();
        boolean tooLow = elbow < model.target(Deviation.ELBOW).green().low() || clearance < wanted;
        if (mode != HandResult.Mode.FEET_LOW_DESK || !tooLow) {
            return 0;
        }
        return Math.max(-elbow, Double.isNaN(clearance) ? 0 : wanted - clearance);
    }

    private double keyboardLowering(Settings set) {
        double elbow = model.deviation(Deviation.ELBOW, set);
        return elbow > model.target(Deviation.ELBOW).green().high() ? elbow : 0;
    }

    private double cushion(Settings set) {
        double gap = model.deviation(Deviation.KNEE_GAP, set);
        Target target = model.target(Deviation.KNEE_GAP);
        return gap < target.green().low() ? target.aim() - gap : 0;
    }

    private boolean seatTooShort(Settings set) {
        return model.deviation(Deviation.KNEE_GAP, set) > model.target(Deviation.KNEE_GAP).green().high();
    }
}
