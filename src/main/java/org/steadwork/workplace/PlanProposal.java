package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.steadwork.drawing.desk.PlanBody;
import org.steadwork.drawing.desk.PlanScreen;
import org.steadwork.drawing.desk.PlanState;
import org.steadwork.drawing.desk.PlanThing;
import org.steadwork.drawing.desk.PlanWindow;

/**
 * Where things on a desk had better stand: keys on the midline, the pointer beside them, the main screen straight ahead, two
 * equal screens with their seam on the midline, a side screen next to the main one, each turned in until it is square.
 * Source: order of setting by common practice; targets after CCOHS, OSHA and NUREG-0700 as in the criteria of the work place.
 */
final class PlanProposal {

    private static final double KEYS_FROM_EDGE = 120;
    private static final double NEAREST_KEYS = 80;
    private static final double FURTHEST_KEYS = 160;
    private static final double BESIDE_THE_KEYS = 50;
    private static final double SHEET = 210;
    private static final double GAP = 20;

    private PlanProposal() {
    }

    /**
     * @param keysFromEdge as found, in mm
     * @param distance     eye to the middle of the main screen as proposed, in mm
     */
    static PlanState of(PlanState now, PlanBody body, double keysFromEdge, double distance) {
        double fromEdge = keysFromEdge >= NEAREST_KEYS && keysFromEdge <= FURTHEST_KEYS ? keysFromEdge : KEYS_FROM_EDGE;
        double edge = body.edgeAhead(fromEdge);
        double ahead = edge + fromEdge;
        PlanThing keys = new PlanThing(0, ahead, now.keyboard().width());
        int hand = now.pointer() == null || now.pointer().aside() >= 0 ? 1 : -1;
        PlanThing pointer = now.pointer() == null ? null : new PlanThing(hand * (keys.width() / 2 + BESIDE_THE_KEYS), ahead, now.pointer().width());
        List<PlanScreen> screens = screens(now, distance);
        return new PlanState(edge, screens, keys, pointer, papers(now, screens, ahead, distance),
                now.phone() == null ? null : new PlanThing(-hand * (body.shoulderBreadth() / 2 + 80), ahead + 40, now.phone().width()), window(now.window()));
    }

    private static List<PlanScreen> screens(PlanState now, double distance) {
        List<PlanScreen> screens = new ArrayList<>();
        if (now.screens().size() == 1) {
            screens.add(new PlanScreen(now.screens().get(0).width(), 0, distance, 0, true, false));
        } else if (now.screens().size() == 2) {
            PlanScreen main = now.screens().stream().filter(PlanScreen::main).findFirst().orElseThrow();
            PlanScreen other = now.screens().stream().filter(screen -> screen != main).findFirst().orElseThrow();
            int side = other.offset() >= main.offset() ? 1 : -1;
            if (other.main()) {
                screens.add(square(main.width(), -side * main.width() / 2, distance, true));
                screens.add(square(other.width(), side * other.width() / 2, distance, true));
            } else {
                screens.add(new PlanScreen(main.width(), 0, distance, 0, true, false));
                screens.add(square(other.width(), side * (main.width() + other.width()) / 2, distance, false));
            }
            screens.sort(Comparator.comparingDouble(PlanScreen::offset));
        }
        return screens;
    }

    /** A screen hinged at its inner edge, turned in by as many whole degrees as leave it squarest to the sight line. */
    private static PlanScreen square(double width, double offset, double distance, boolean main) {
        double inner = Math.abs(offset) - width / 2;
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int turn = 0; turn <= 60; turn++) {
            double t = Math.toRadians(turn);
            double x = inner + width / 2 * Math.cos(t);
            double y = distance - width / 2 * Math.sin(t);
            double off = Math.abs(Math.toDegrees(Math.atan2(x, y)) - turn);
            if (y > 0 && off < least) {
                least = off;
                best = turn;
            }
        }
        return new PlanScreen(width, offset, distance, best, main, true);
    }

    /** Beside a single screen, on the side where they lie now; with two, between screens and keys. */
    private static PlanThing papers(PlanState now, List<PlanScreen> screens, double keysAhead, double distance) {
        if (now.papers() == null) {
            return null;
        }
        if (screens.size() == 1) {
            int side = now.papers().aside() >= 0 ? 1 : -1;
            return new PlanThing(side * (screens.get(0).width() / 2 + SHEET / 2 + GAP), 95 + distance - 100, SHEET);
        }
        return new PlanThing(0, keysAhead + 70 + 297 / 2. + GAP, SHEET);
    }

    /** The desk turned so that the sight line runs along the window. */
    private static PlanWindow window(PlanWindow now) {
        if (now == null) {
            return null;
        }
        boolean beside = now.where() == PlanWindow.Where.LEFT || now.where() == PlanWindow.Where.RIGHT;
        return new PlanWindow(0, beside ? now.where() : PlanWindow.Where.LEFT);
    }
}
