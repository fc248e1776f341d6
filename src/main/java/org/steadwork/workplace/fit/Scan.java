package org.steadwork.workplace.fit;

/**
 * Finds the best setting that the equipment allows, by going through the heights of the seat. For one height of the seat,
 * feet, elbow and eye leave runs of desk heights in the order of {@link Objective}, and every other part is set to its best
 * value; a seat that is behind the best one so far is left as soon as that shows, and so are all seats beyond it where they
 * can only be worse. The result is exact on the grid of the travels. One scan serves any number of bodies, one after the
 * other; it is not for several threads.
 */
final class Scan {

    private static final int NOT_BEHIND = Integer.MAX_VALUE;

    private final FitModel model;
    private final Settings present;
    private final Travel seat;
    private final Travel desk;
    private final Travel footrest;
    private final Travel screen;
    private final DeskHeights desks;
    private final PartsBeside beside;
    private final boolean coarseScreen;
    private final double highestRest;
    private final double homeRow;
    private final double topThickness;
    private final double footrestAbove;
    private final Target clearance;
    private final Target elbow;
    private final Target feet;
    private final Target drop;

    private final Tiers tiers = new Tiers();
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
        this.highestRest = footrest == null ? 0 : footrest.high();
        this.beside = new PartsBeside(model);
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
        return scan(fitted, false);
    }

    /** Returns a setting that costs as little as any, tier by tier, without asking which of several that cost nothing is the best. */
    Settings bestByCost(Body fitted) {
        return scan(fitted, true);
    }

    private Settings scan(Body fitted, boolean anyThatIsFree) {
        body = fitted;
        tiers.clear();
        int start = seat.index(seatByHand());
        int seats = seat.settings();
        for (int index = start; index < seats; index++) {
            if (onlyWorseAbove(trySeat(seat.setting(index)), seat.setting(index)) || anyThatIsFree && tiers.isNoughtUpTo(Tiers.EYE)) {
                break;
            }
        }
        for (int index = start - 1; index >= 0 && !(anyThatIsFree && tiers.isNoughtUpTo(Tiers.EYE)); index--) {
            if (onlyWorseBelow(trySeat(seat.setting(index)), seat.setting(index))) {
                break;
            }
        }
        return new Settings(beside.seatDepth(body), present.cushion(), bestSeat, bestFootrest, bestDesk, beside.armrest(body), bestScreenTop,
                beside.distance(body));
    }

    /** Returns the height that one would set by hand: a good one to start from, so that others are soon left behind. */
    private double seatByHand() {
        double feetHeight = body.feetHeight();
        double keysAboveSeat = body.elbow() - homeRow;
        double seatFromDesk = desk.clip(feetHeight + keysAboveSeat) - keysAboveSeat;
        return Math.max(feetHeight, Math.min(seatFromDesk, feetHeight + highestRest));
    }

    /** Higher up there is less room for the thigh, beyond the footrest the feet hang more, and the highest desk is lower. */
    private boolean onlyWorseAbove(int behindBy, double height) {
        boolean hanging = height - body.feetHeight() - highestRest > feet.aim();
        boolean deskTooLow = desks.onlyHighest() && atElbow(height) + elbow.aim() > desks.height(desks.first());
        return behindBy <= Tiers.MISSING || hanging && onlyFeetCount(behindBy) || deskTooLow && onlyElbowCounts(behindBy);
    }

    /** Further down the knees rise more, and the lowest desk is higher; only the thigh gets more room. */
    private boolean onlyWorseBelow(int behindBy, double height) {
        boolean raised = height - body.feetHeight() < feet.aim();
        boolean deskTooHigh = desks.onlyLowest() && atElbow(height) + elbow.aim() < desks.height(desks.first());
        return tiers.isNought(Tiers.MISSING) && (raised && onlyFeetCount(behindBy) || deskTooHigh && onlyElbowCounts(behindBy));
    }

    /** Tells whether a seat was behind by the feet, and nothing but the feet could be better for another. */
    private boolean onlyFeetCount(int behindBy) {
        return behindBy == Tiers.FEET || behindBy == Tiers.FEET_SQUARED && tiers.isNought(Tiers.ELBOW) && tiers.isNought(Tiers.EYE);
    }

    private boolean onlyElbowCounts(int behindBy) {
        return tiers.isNought(Tiers.FEET) && (behindBy == Tiers.ELBOW || behindBy == Tiers.ELBOW_SQUARED && tiers.isNoughtUpTo(Tiers.FEET_SQUARED));
    }

    private double atElbow(double height) {
        return height + body.elbow() - homeRow;
    }

    /** Tries one height of the seat; returns the last tier by which its settings were behind, unless one was not. */
    private int trySeat(double height) {
        if (Double.isNaN(body.thigh())) {
            desks.startFrom(0);
            tiers.put(Tiers.CONTACT, 0);
            tiers.put(Tiers.MISSING, 0);
        } else {
            double underDesk = height + body.thigh() + topThickness;
            desks.startAtLeast(underDesk + clearance.green().low());
            double room = desks.height(desks.first()) - underDesk;
            tiers.put(Tiers.CONTACT, Math.max(0, -room));
            tiers.put(Tiers.MISSING, Math.max(0, clearance.green().low() - room));
        }
        if (tiers.behindBy(Tiers.MISSING)) {
            return Tiers.MISSING;
        }
        int firstDesk = desks.first();
        double hanging = height - body.feetHeight();
        int behind = tryFeet(height, 0, firstDesk);
        // A footrest counts as needed only when the feet hang by more than the allowance without it.
        if (footrest != null && hanging > footrestAbove) {
            double lower = footrest.atOrBelow(hanging - feet.aim());
            double higher = footrest.atOrAbove(hanging - feet.aim());
            behind = Math.max(behind, tryFeet(height, lower, firstDesk));
            if (higher > lower) {
                behind = Math.max(behind, tryFeet(height, higher, firstDesk));
            }
        }
        return behind;
    }

    private int tryFeet(double height, double rest, int firstDesk) {
        if (tiers.bestIsAtEveryAim() && tiers.noLessInUse(rest, change(height, present.seat()) + change(rest, present.footrest()))) {
            return Tiers.FOOTREST_HEIGHT;
        }
        double off = height - rest - body.feetHeight();
        tiers.put(Tiers.FEET, feet.cost(off));
        if (tiers.behindBy(Tiers.FEET)) {
            return Tiers.FEET;
        }
        double atElbow = atElbow(height);
        desks.startFrom(firstDesk);
        if (elbow.weight() > 0) {
            desks.keepNearest(atElbow + elbow.green().low(), atElbow + elbow.green().high());
        }
        tiers.put(Tiers.ELBOW, elbow.cost(desks.height(desks.first()) - atElbow));
        if (tiers.behindBy(Tiers.ELBOW)) {
            return Tiers.ELBOW;
        }
        double eye = height + body.eye();
        tiers.put(Tiers.FEET_SQUARED, square(off - feet.aim()));
        if (!coarseScreen) {
            keepWhereTheScreenServes(eye);
            tiers.put(Tiers.EYE, drop.cost(eye - screenTop(eye, desks.height(desks.first()))));
            if (tiers.behindBy(Tiers.FEET_SQUARED)) {
                return tiers.behindBy(Tiers.EYE) ? Tiers.EYE : Tiers.FEET_SQUARED;
            }
            desks.keepNearest(atElbow + elbow.aim(), atElbow + elbow.aim());
            tiers.put(Tiers.ELBOW_SQUARED, square(desks.height(desks.first()) - atElbow - elbow.aim()));
            if (tiers.behindBy(Tiers.ELBOW_SQUARED)) {
                return Tiers.ELBOW_SQUARED;
            }
        }
        for (int i = desks.first(); i <= desks.last(); i++) {
            tryDesk(height, rest, desks.height(i));
        }
        return NOT_BEHIND;
    }

    /** A screen whose steps are wider than its band may miss it between two of them; then every desk is tried instead. */
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
        tiers.put(Tiers.EYE, drop.cost(below));
        tiers.put(Tiers.ELBOW_SQUARED, square(deskTop - atElbow(height) - elbow.aim()));
        tiers.put(Tiers.EYE_SQUARED, Double.isNaN(below) ? 0 : square(below - drop.aim()));
        tiers.put(Tiers.FOOTREST_USED, rest > 0 ? 1 : 0);
        tiers.put(Tiers.CHANGE, change(height, present.seat()) + change(rest, present.footrest()) + change(deskTop, present.desk())
                + change(top, present.screenTop()));
        tiers.put(Tiers.FOOTREST_HEIGHT, rest);
        if (tiers.ahead()) {
            tiers.keep();
            bestSeat = height;
            bestFootrest = rest;
            bestDesk = deskTop;
            bestScreenTop = top;
        }
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
        return drop.prefers(eye - lower, eye - higher) ? lower : higher;
    }
}
