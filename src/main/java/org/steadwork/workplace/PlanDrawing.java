package org.steadwork.workplace;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steadwork.drawing.desk.BodyMeasure;
import org.steadwork.drawing.desk.PlanBands;
import org.steadwork.drawing.desk.PlanBody;
import org.steadwork.drawing.desk.PlanScene;
import org.steadwork.drawing.desk.PlanScreen;
import org.steadwork.drawing.desk.PlanState;
import org.steadwork.drawing.desk.PlanThing;
import org.steadwork.drawing.desk.PlanView;
import org.steadwork.drawing.desk.PlanWindow;
import org.steadwork.drawing.desk.Show;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.Measurement;

/** Hands what was read off a desk from above to its drawing. */
@Singleton
class PlanDrawing {

    private static final double LEAST_DISTANCE = 500;
    private static final double MOST_DISTANCE = 800;
    private static final double MOUSE = 64;
    private static final double SHEET = 210;
    private static final double PHONE = 80;

    @Inject
    PlanContent content;

    private final PlanBands bands = PlanBands.read();

    /** Draws now and proposed; {@code width} as a {@link PlanView} takes it. */
    String draw(RecordedWorkplace recorded, DeskPlan plan, int width) {
        return PlanView.draw(scene(recorded, plan), Show.BOTH, width).svg();
    }

    PlanScene scene(RecordedWorkplace recorded, DeskPlan plan) {
        Readings at = new Readings(plan);
        PlanBody body = body(recorded);
        double keys = at.of(PlanItem.KEYS_EDGE);
        double edge = body.edgeAhead(keys);
        PlanState now = new PlanState(edge, screens(at, plan.second()), new PlanThing(at.of(PlanItem.KEYS_ASIDE), edge + keys, at.of(PlanItem.KEYS_WIDTH)),
                at.thing(PlanItem.POINTER_ASIDE, PlanItem.POINTER_EDGE, edge, MOUSE), at.thing(PlanItem.PAPERS_ASIDE, PlanItem.PAPERS_EDGE, edge, SHEET),
                at.thing(PlanItem.PHONE_ASIDE, PlanItem.PHONE_EDGE, edge, PHONE),
                plan.window() == null || !at.has(PlanItem.WINDOW_OFF) ? null : new PlanWindow(at.of(PlanItem.WINDOW_OFF), plan.window()));
        String title = recorded.assessment().place() == null ? "the work place" : recorded.assessment().place();
        return new PlanScene("work-place-" + recorded.assessment().id(), title, body, at.of(PlanItem.DESK_WIDTH), at.of(PlanItem.DESK_DEPTH), now,
                PlanProposal.of(now, body, keys, distance(recorded, now)), bands);
    }

    private static double distance(RecordedWorkplace recorded, PlanState now) {
        double found = now.screens().stream().filter(PlanScreen::main).mapToDouble(PlanScreen::distance).findFirst().orElse(LEAST_DISTANCE);
        double wanted = recorded.fit().map(FitResult::best).map(best -> best.distance()).filter(d -> !Double.isNaN(d)).orElse(found);
        return Math.min(MOST_DISTANCE, Math.max(LEAST_DISTANCE, wanted));
    }

    private static PlanBody body(RecordedWorkplace recorded) {
        Map<BodyMeasure, Double> body = new EnumMap<>(BodyMeasure.class);
        Measurement stature = recorded.person().measure(org.steadwork.workplace.fit.BodyMeasure.STATURE);
        Measurement arm = recorded.person().measure(org.steadwork.workplace.fit.BodyMeasure.ARM_REACH);
        Measurement leg = recorded.person().measure(org.steadwork.workplace.fit.BodyMeasure.POPLITEAL_HEIGHT);
        if (stature.known()) {
            body.put(BodyMeasure.STATURE, stature.value());
        }
        if (leg.known()) {
            body.put(BodyMeasure.POPLITEAL, leg.value());
        }
        return PlanBody.of(body, arm.known() ? arm.value() : null);
    }

    private static List<PlanScreen> screens(Readings at, SecondScreen second) {
        List<PlanScreen> screens = new ArrayList<>();
        if (at.has(PlanItem.MAIN_WIDTH) && at.has(PlanItem.MAIN_ASIDE) && at.has(PlanItem.MAIN_DISTANCE)) {
            screens.add(new PlanScreen(at.of(PlanItem.MAIN_WIDTH), at.of(PlanItem.MAIN_ASIDE), at.of(PlanItem.MAIN_DISTANCE), at.or(PlanItem.MAIN_TURN, 0), true, false));
            if (second != SecondScreen.NONE && at.has(PlanItem.SECOND_WIDTH) && at.has(PlanItem.SECOND_ASIDE) && at.has(PlanItem.SECOND_DISTANCE)) {
                screens.add(new PlanScreen(at.of(PlanItem.SECOND_WIDTH), at.of(PlanItem.SECOND_ASIDE), at.of(PlanItem.SECOND_DISTANCE),
                        at.or(PlanItem.SECOND_TURN, 0), second == SecondScreen.EQUAL, false));
            }
        }
        screens.sort(Comparator.comparingDouble(PlanScreen::offset));
        return screens;
    }

    /** What was read off, or what the content draws instead. */
    private final class Readings {
        private final Map<PlanItem, java.math.BigDecimal> read;

        Readings(DeskPlan plan) {
            read = plan.readings();
        }

        boolean has(PlanItem item) {
            return read.containsKey(item);
        }

        double of(PlanItem item) {
            return or(item, content.of(item).otherwise());
        }

        double or(PlanItem item, double otherwise) {
            return has(item) ? read.get(item).doubleValue() : otherwise;
        }

        PlanThing thing(PlanItem aside, PlanItem fromEdge, double edge, double width) {
            return has(aside) && has(fromEdge) ? new PlanThing(of(aside), edge + of(fromEdge), width) : null;
        }
    }
}
