package org.steadwork.workplace.fit;

import java.util.Arrays;

/**
 * Finds the best setting that the equipment allows, by going through every height of the seat. For one height of the seat,
 * feet, elbow and eye leave runs of desk heights in the order of {@link Objective}, and every other part is set to its best
 * value; a seat that is behind the best one so far is left as soon as that shows. The result is exact on the grid of the
 * travels. One scan serves any number of bodies, one after the other; it is not for several threads.
 */
final class Scan {

    private static final double HAIR = 1e-9;
    private static final int CONTACT = 0;
    private static final int MISSING = 1;
    private static final int FEET = 2;
    private static final int ELBOW = 3;
    private static final int EYE = 4;
    private static final int FEET_SQUARED = 5;
    private static final int ELBOW_SQUARED = 6;
    private static final int EYE_SQUARED = 7;
    private static final int FOOTREST_USED = 8;
    private static final int CHANGE = 9;
    private static final int FOOTREST_HEIGHT = 10;

    private final FitModel model;
    private final Settings present;
    private final Travel seat;
    private final Travel footrest;
    private final Travel screen;
    private final Travel desk;
    private final DeskHeights desks;
    private final boolean coarseScreen;
    private final double homeRow;
    private final double topThickness;
    private final double footrestAbove;
    private final Target clearance;
    private final Target elbow;
    private final Target feet;
    private final Target drop;

    private final double[] least = new double[FOOTREST_HEIGHT + 1];
    private final double[] tried = new double[FOOTREST_HEIGHT + 1];
    private Body body;
    private double bestSeat;
    private double bestFootrest;
    private double bestDesk;
    private double bestScreenTop;

    Scan(FitModel model) {
        this.model = model;
        this.present = model.station().present();
        this.seat = needed(Part.SEAT);
        this.desk = needed(Part.DESK);
        this.desks = new DeskHeights(desk);
        this.footrest = model.station().travelOrNull(Part.FOOTREST);
        this.screen = model.station().travelOrNull(Part.SCREEN_TOP);
        this.homeRow = model.station().homeRow();
        this.topThickness = model.station().topThickness();
        this.footrestAbove = model.targets().allowances().footrestAbove();
        this.clearance = model.target(Deviation.CLEARANCE);
        this.elbow = model.target(Deviation.ELBOW);
        this.feet = model.target(Deviation.FEET);
        this.drop = model.target(Deviation.SCREEN_DROP);
        this.coarseScreen = screen != null && !screen.isFixed() && screen.step() > drop.green().high() - drop.green().low();
    }

    private Travel needed(Part part) {
        Travel travel = model.station().travelOrNull(part);
        if (travel == null) {
            throw new IllegalArgumentException(part + " was not looked at");
        }
        return travel;
    }

    /** Returns the best setting for the person of the model. */
    Settings best() {
        return best(model.body());
    }

    /** Returns the best setting for another body at the same work place. */
    Settings best(Body fitted) {
        body = fitted;
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        // First the height that one would set by hand, so that most of the others are soon left behind.
        double feetHeight = fitted.feetHeight();
        double keysAboveSeat = fitted.elbow() - homeRow;
        trySeat(seat.atOrBelow(Math.max(feetHeight, desk.clip(feetHeight + keysAboveSeat) - keysAboveSeat)));
        int seats = seat.settings();
        int index = 0;
        while (index < seats && trySeat(seat.setting(index))) {
            index++;
        }
        return new Settings(seatDepth(), present.cushion(), bestSeat, bestFootrest, bestDesk, armrest(), bestScreenTop, model.wantedDistance(fitted));
    }

    /** Tries one height of the seat; false when it presses more on the thigh than the best one, as all above it will. */
    private boolean trySeat(double height) {
        if (Double.isNaN(body.thigh())) {
            desks.startFrom(0);
            tried[CONTACT] = 0;
            tried[MISSING] = 0;
        } else {
            double underDesk = height + body.thigh() + topThickness;
            desks.startAtLeast(underDesk + clearance.green().low());
            double room = desks.height(desks.first()) - underDesk;
            tried[CONTACT] = Math.max(0, -room);
            tried[MISSING] = Math.max(0, clearance.green().low() - room);
        }
        if (behindBy(MISSING)) {
            return false;
        }
        int firstDesk = desks.first();
        double hanging = height - body.feetHeight();
        tryFeet(height, 0, firstDesk);
        // A footrest counts as needed only when the feet hang by more than the allowance without it.
        if (footrest != null && hanging > footrestAbove) {
            double lower = footrest.atOrBelow(hanging - feet.aim());
            double higher = footrest.atOrAbove(hanging - feet.aim());
            tryFeet(height, lower, firstDesk);
            if (higher > lower) {
                tryFeet(height, higher, firstDesk);
            }
        }
        return true;
    }

    private void tryFeet(double height, double rest, int firstDesk) {
        double off = height - rest - body.feetHeight();
        tried[FEET] = feet.cost(off);
        if (behindBy(FEET)) {
            return;
        }
        double atElbow = height + body.elbow() - homeRow;
        desks.startFrom(firstDesk);
        if (elbow.weight() > 0) {
            desks.keepNearest(atElbow + elbow.green().low(), atElbow + elbow.green().high());
        }
        tried[ELBOW] = elbow.cost(desks.height(desks.first()) - atElbow);
        tried[FEET_SQUARED] = square(off - feet.aim());
        if (behindBy(ELBOW)) {
            return;
        }
        double eye = height + body.eye();
        if (!coarseScreen) {
            keepWhereTheScreenServes(eye);
            tried[EYE] = drop.cost(eye - screenTop(eye, desks.height(desks.first())));
            if (behindBy(FEET_SQUARED)) {
                return;
            }
            desks.keepNearest(atElbow + elbow.aim(), atElbow + elbow.aim());
        }
        for (int i = desks.first(); i <= desks.last(); i++) {
            tryDesk(height, rest, desks.height(i));
        }
    }

    private void keepWhereTheScreenServes(double eye) {
        if (screen != null && !Double.isNaN(eye) && drop.weight() > 0) {
            double highest = screen.setting(screen.settings() - 1);
            desks.keepNearest(eye - drop.green().high() - highest, eye - drop.green().low() - screen.low());
        }
    }

    private void tryDesk(double height, double rest, double deskTop) {
        double eye = height + body.eye();
        double top = screenTop(eye, deskTop);
        double below = eye - top;
        tried[EYE] = drop.cost(below);
        tried[ELBOW_SQUARED] = square(deskTop + homeRow - height - body.elbow() - elbow.aim());
        tried[EYE_SQUARED] = Double.isNaN(below) ? 0 : square(below - drop.aim());
        tried[FOOTREST_USED] = rest > 0 ? 1 : 0;
        tried[CHANGE] = change(height, present.seat()) + change(rest, present.footrest()) + change(deskTop, present.desk())
                + change(top, present.screenTop());
        tried[FOOTREST_HEIGHT] = rest;
        if (order(FOOTREST_HEIGHT) < 0) {
            System.arraycopy(tried, 0, least, 0, least.length);
            bestSeat = height;
            bestFootrest = rest;
            bestDesk = deskTop;
            bestScreenTop = top;
        }
    }

    private boolean behindBy(int lastTier) {
        return order(lastTier) > 0;
    }

    /** Compares what is tried with the best so far, tier by tier up to the last one that is known. */
    private int order(int lastTier) {
        for (int tier = 0; tier <= lastTier; tier++) {
            double difference = tried[tier] - least[tier];
            if (difference > HAIR) {
                return 1;
            }
            if (difference < -HAIR) {
                return -1;
            }
        }
        return 0;
    }

    private static double square(double off) {
        return off * off;
    }

    private static double change(double now, double before) {
        double change = Math.abs(now - before);
        return Double.isNaN(change) ? 0 : change;
    }

    private double screenTop(double eye, double deskTop) {
        if (Double.isNaN(eye)) {
            return present.screenTop();
        }
        double wanted = eye - drop.aim();
        if (screen == null) {
            return wanted;
        }
        double lower = deskTop + screen.atOrBelow(wanted - deskTop);
        double higher = deskTop + screen.atOrAbove(wanted - deskTop);
        return better(drop, eye - lower, eye - higher) ? lower : higher;
    }

    private double seatDepth() {
        Target gap = model.target(Deviation.KNEE_GAP);
        double behindKnee = body.thighLength() + present.cushion();
        Travel travel = model.station().travelOrNull(Part.SEAT_DEPTH);
        if (travel == null || Double.isNaN(behindKnee)) {
            return present.seatDepth();
        }
        double shorter = travel.atOrBelow(behindKnee - gap.aim());
        double longer = travel.atOrAbove(behindKnee - gap.aim());
        return better(gap, behindKnee - shorter, behindKnee - longer) ? shorter : longer;
    }

    private double armrest() {
        Target level = model.target(Deviation.ARMREST);
        Travel travel = model.station().travelOrNull(Part.ARMREST);
        if (travel == null || Double.isNaN(body.elbow())) {
            return present.armrest();
        }
        double lower = travel.atOrBelow(body.elbow() + level.aim());
        double higher = travel.atOrAbove(body.elbow() + level.aim());
        return better(level, lower - body.elbow(), higher - body.elbow()) ? lower : higher;
    }

    /** Tells whether the first deviation costs less than the second, or as much and is no further from the aim. */
    private static boolean better(Target target, double first, double second) {
        int byCost = Double.compare(target.cost(first), target.cost(second));
        int byAim = Double.compare(Math.abs(first - target.aim()), Math.abs(second - target.aim()));
        return (byCost != 0 ? byCost : byAim) <= 0;
    }
}
