package org.steadwork.workplace.fit;

/**
 * The desk heights that are still in the running for one height of the seat: a run of neighbouring settings. Each thing
 * that is asked of the desk costs nothing within a band and more the further from it, so what is best is again such a run.
 */
final class DeskHeights {

    private static final double HAIR = 1e-9;

    private final double lowest;
    private final double step;
    private final double perStep;
    private final int count;
    private int first;
    private int last;

    DeskHeights(Travel desk) {
        this.lowest = desk.low();
        this.step = desk.step();
        this.perStep = 1 / desk.step();
        this.count = desk.settings();
    }

    int first() {
        return first;
    }

    int last() {
        return last;
    }

    double height(int index) {
        return lowest + index * step;
    }

    boolean onlyHighest() {
        return first == count - 1;
    }

    boolean onlyLowest() {
        return last == 0;
    }

    /** Puts every height from the given one up into the running. */
    void startFrom(int index) {
        first = index;
        last = count - 1;
    }

    /** Puts into the running what is at least this high; the highest alone when none is. */
    void startAtLeast(double wanted) {
        startFrom(Math.min(count - 1, Math.max(0, atOrAbove(wanted))));
    }

    /** Keeps what is nearest to the band [low, high]: all that lies within, else the nearest, or two that are as near. */
    void keepNearest(double low, double high) {
        if (first == last) {
            return;
        }
        int above = Math.max(first, atOrAbove(low));
        int below = Math.min(last, atOrBelow(high));
        if (above <= below) {
            first = above;
            last = below;
        } else if (above > last) {
            first = last;
        } else if (below < first) {
            last = first;
        } else {
            double under = low - height(below);
            double over = height(above) - high;
            first = over < under - HAIR ? above : below;
            last = under < over - HAIR ? below : above;
        }
    }

    private int atOrAbove(double wanted) {
        return (int) Math.ceil((wanted - lowest) * perStep - HAIR);
    }

    private int atOrBelow(double wanted) {
        return (int) Math.floor((wanted - lowest) * perStep + HAIR);
    }
}
