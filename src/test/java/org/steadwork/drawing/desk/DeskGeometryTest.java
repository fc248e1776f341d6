package org.steadwork.drawing.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.content.Entry;

class DeskGeometryTest {

    private static final double HALF_OF_THE_LAST_DIGIT = .05 + 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"case-1", "case-4", "case-6", "case-9", "case-10"})
    void deviationsOfTheProposedStateAreThoseWorkedByHand(String name) {
        Entry expected = WorkedScenes.entry(name).entry("expected").orElseThrow();
        Deviations d = Stage.of(WorkedScenes.scene(name)).then().deviations();
        Map<String, Double> computed = Map.of("feet", d.feet, "elbow", d.elbow, "thigh", d.thigh, "knee", d.knee, "drop", d.drop, "gaze", d.gaze);
        assertTrue(expected.keys().size() > 3, "nothing expected");
        for (String key : expected.keys()) {
            assertEquals(expected.number(key), computed.get(key), HALF_OF_THE_LAST_DIGIT, name + " " + key);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"case-1", "case-4", "case-5-standing", "case-6", "case-9", "case-10", "case-wheelchair"})
    void theDrawnPersonKeepsTheMeasuredHeightsAndLengths(String name) {
        Stage stage = Stage.of(WorkedScenes.scene(name));
        for (Placed state : new Placed[] {stage.now(), stage.then()}) {
            Pose pose = state.pose();
            assertEquals(state.deviations().eyeAt, state.joints().eyeNeutral().y(), 1e-6, "eye");
            assertEquals(pose.forearm(), state.arm().elbow().distance(state.arm().wrist()), 1e-6, "forearm");
            double seen = state.joints().shoulder().distance(state.arm().elbow());
            assertEquals(pose.upperArm() * Math.cos(Math.toRadians(state.arm().abduction())), seen, 1e-6, "upper arm");
            if (!stage.standing()) {
                double shank = stage.body().of(BodyMeasure.POPLITEAL) - .006 * pose.stature();
                assertEquals(shank, state.joints().knee().y() - state.joints().ankle().y(), 1e-6, "lower leg");
            }
        }
    }

    @Test
    void theFootStandsOnItsSupportWhenTheSeatAllows() {
        Stage stage = Stage.of(WorkedScenes.scene("case-1"));
        Placed then = stage.then();
        double sole = then.joints().ankle().y() - .040 * then.pose().stature() - 20;
        assertEquals(140, sole, 1e-6);
        assertEquals(80, stage.now().pose().legs().hang(), 1e-6);
    }

    @Test
    void aCalfThatMeetsTheSeatTakesTheBackOffTheRest() {
        Placed now = Stage.of(WorkedScenes.scene("case-10")).now();
        assertEquals(38, now.pose().legs().backGap(), 1e-6);
    }

    @Test
    void thighRoomFollowsFromElbowDeskAndBodyAlone() {
        // c = e + (E - k - t - T): raising the seat cannot change it once the elbow is right
        for (String name : WorkedScenes.ALL) {
            DeskScene scene = WorkedScenes.scene(name);
            if (scene.standing()) {
                continue;
            }
            Stage stage = Stage.of(scene);
            Deviations d = stage.then().deviations();
            Settings s = stage.then().settings();
            double k = stage.body().of(BodyMeasure.ELBOW_REST) - s.of(Setting.HOME_ROW) - s.of(Setting.DESK_THICKNESS) - stage.body().of(BodyMeasure.THIGH);
            assertEquals(d.elbow + k, d.thigh, 1e-9, name);
        }
    }

    @Test
    void whatRestsOnAMissingNumberIsNotJudged() {
        DeskScene scene = WorkedScenes.scene("case-1");
        for (BodyMeasure measure : BodyMeasure.values()) {
            DeskScene without = WorkedScenes.without(scene, measure);
            Deviations d = Stage.of(without).now().deviations();
            boolean judgedBy = switch (measure) {
                case POPLITEAL, SHOE, ELBOW_REST, EYE_SITTING, BUTTOCK_POPLITEAL, THIGH -> true;
                default -> false;
            };
            long open = java.util.Arrays.stream(Target.values()).filter(t -> d.state(t) == State.NOT_MEASURED).count();
            assertEquals(judgedBy, open > 0, measure.name());
        }
    }

    @Test
    void anArmRestThatWasNotLookedAtIsNotNone() {
        DeskScene scene = WorkedScenes.asFoundWithout(WorkedScenes.scene("case-1"), Setting.FOOTREST_HEIGHT);
        Deviations d = Stage.of(scene).now().deviations();
        assertEquals(State.NOT_MEASURED, d.state(Target.FEET));
        assertEquals("footrest", d.missing(Target.FEET).orElseThrow());
    }

    @Test
    void numbersOutOfRangeAndNotANumberAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> DeskState.of(Map.of(Setting.SEAT_HEIGHT, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> DeskState.of(Map.of(Setting.SEAT_HEIGHT, 1201.)));
        DeskScene s = WorkedScenes.scene("case-1");
        for (double bad : new double[] {0, -1, 2601, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new DeskScene(s.id(), "", "", s.posture(), s.glasses(),
                    Map.of(BodyMeasure.STATURE, bad), s.present(), null, s.bands()), "stature " + bad);
        }
        assertThrows(IllegalArgumentException.class, () -> new Band(0, -1, -2, 3));
        assertThrows(IllegalArgumentException.class, () -> new Band(0, Double.NaN, -2, 3));
    }

    @Test
    void bandsJudgeTheirEndsAndTheValueBeside() {
        Band elbow = BandContent.read().of(Target.ELBOW);
        assertEquals(State.IN_RANGE, elbow.judge(-30));
        assertEquals(State.A_LITTLE_OFF, elbow.judge(-30.001));
        assertEquals(State.A_LITTLE_OFF, elbow.judge(30));
        assertEquals(State.OUT_OF_RANGE, elbow.judge(30.001));
        Band thigh = BandContent.read().of(Target.THIGH);
        assertEquals(State.IN_RANGE, thigh.judge(5000));
        assertEquals(State.OUT_OF_RANGE, thigh.judge(-.001));
    }
}
