package org.steadwork.workplace.fit;

import java.util.TreeSet;

/**
 * Finds the best setting that the equipment allows, by going through every height of the seat. For one seat height the
 * cost of a desk height is made of straight pieces, so that only the heights where a piece ends, and the settings next to
 * them, can be best; every other part is set to its best value. The result is exact on the grid of the travels.
 */
final class Scan {

    private final FitModel model;
    private final Travel seat;
    private final Travel desk;
    private final Travel screen;
    private final Target drop;

    Scan(FitModel model) {
        this.model = model;
        this.seat = travel(Part.SEAT);
        this.desk = travel(Part.DESK);
        this.screen = model.station().travel(Part.SCREEN_TOP).orElse(null);
        this.drop = model.target(Deviation.SCREEN_DROP);
    }

    private Travel travel(Part part) {
        return model.station().travel(part).orElseThrow(() -> new IllegalArgumentException(part + " was not looked at"));
    }

    Settings best() {
        Settings best = null;
        Objective least = null;
        Settings alongside = settingsBesideSeatAndDesk();
        for (int i = 0; i < seat.settings(); i++) {
            double height = seat.setting(i);
            TreeSet<Double> tops = desks(height);
            for (double footrest : footrests(height)) {
                for (double top : tops) {
                    Settings candidate = new Settings(alongside.seatDepth(), alongside.cushion(), height, footrest, top, alongside.armrest(),
                            screenTop(height, top), alongside.distance());
                    Objective objective = Objective.of(model, candidate);
                    if (least == null || objective.compareTo(least) < 0) {
                        best = candidate;
                        least = objective;
                    }
                }
            }
        }
        return best;
    }

    /** A footrest counts as needed only when the feet hang by more than the allowance without it. */
    private double[] footrests(double height) {
        double hanging = height - model.feetHeight();
        Travel footrest = model.station().travel(Part.FOOTREST).orElse(null);
        if (footrest == null || !(hanging > model.targets().allowances().footrestAbove())) {
            return new double[] {0};
        }
        return new double[] {0, footrest.atOrBelow(hanging), footrest.atOrAbove(hanging)};
    }

    private TreeSet<Double> desks(double height) {
        TreeSet<Double> tops = new TreeSet<>();
        add(tops, desk.low());
        add(tops, desk.high());
        Target clearance = model.target(Deviation.CLEARANCE);
        Target elbow = model.target(Deviation.ELBOW);
        double underThigh = height + model.thigh() + model.station().topThickness();
        add(tops, underThigh);
        add(tops, underThigh + clearance.green().low());
        double atElbow = height + model.elbow() - model.station().homeRow();
        add(tops, atElbow + elbow.aim());
        add(tops, atElbow + elbow.green().low());
        add(tops, atElbow + elbow.green().high());
        if (screen != null) {
            for (double limit : new double[] {screen.low(), screen.high()}) {
                double eyeAboveLimit = height + model.eye() - limit;
                add(tops, eyeAboveLimit - drop.aim());
                add(tops, eyeAboveLimit - drop.green().low());
                add(tops, eyeAboveLimit - drop.green().high());
            }
        }
        return tops;
    }

    private void add(TreeSet<Double> tops, double wanted) {
        if (!Double.isNaN(wanted)) {
            tops.add(desk.atOrBelow(wanted));
            tops.add(desk.atOrAbove(wanted));
        }
    }

    /** Depth, cushion, armrest and distance depend on no other setting. */
    private Settings settingsBesideSeatAndDesk() {
        Settings present = model.station().present();
        return new Settings(seatDepth(present), present.cushion(), Double.NaN, 0, Double.NaN, armrest(present), Double.NaN, distance());
    }

    private double seatDepth(Settings present) {
        double wanted = model.thighLength() + present.cushion() - model.target(Deviation.KNEE_GAP).aim();
        return nearest(Part.SEAT_DEPTH, wanted, present.with(Part.SEAT_DEPTH, wanted), Deviation.KNEE_GAP);
    }

    private double armrest(Settings present) {
        double wanted = model.elbow() + model.target(Deviation.ARMREST).aim();
        return nearest(Part.ARMREST, wanted, present, Deviation.ARMREST);
    }

    private double distance() {
        double wanted = model.wantedDistance();
        return model.station().travel(Part.DISTANCE).map(travel -> travel.clip(wanted)).orElse(wanted);
    }

    private double screenTop(double height, double top) {
        double wanted = height + model.eye() - drop.aim();
        if (Double.isNaN(wanted)) {
            return model.station().present().screenTop();
        }
        if (screen == null) {
            return wanted;
        }
        double lower = top + screen.atOrBelow(wanted - top);
        double higher = top + screen.atOrAbove(wanted - top);
        double eye = height + model.eye();
        return better(drop, eye - lower, eye - higher) ? lower : higher;
    }

    private double nearest(Part part, double wanted, Settings at, Deviation judged) {
        Travel travel = model.station().travel(part).orElse(null);
        if (travel == null || Double.isNaN(wanted)) {
            return model.station().present().value(part);
        }
        double below = travel.atOrBelow(wanted);
        double above = travel.atOrAbove(wanted);
        boolean first = better(model.target(judged), model.deviation(judged, at.with(part, below)), model.deviation(judged, at.with(part, above)));
        return first ? below : above;
    }

    /** Tells whether the first deviation costs less than the second, or as much and is no further from the aim. */
    private static boolean better(Target target, double first, double second) {
        int byCost = Double.compare(target.cost(first), target.cost(second));
        int byAim = Double.compare(Math.abs(first - target.aim()), Math.abs(second - target.aim()));
        return (byCost != 0 ? byCost : byAim) <= 0;
    }
}
