package org.steadwork.drawing.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class DeskViewTest {

    static List<String> all() {
        return WorkedScenes.ALL;
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyWorkedSceneIsPlainSvgWithATextAlternative(String name) {
        for (Show show : Show.values()) {
            for (int width : new int[] {DeskView.PHONE, 460, DeskView.PAGE}) {
                DeskView view = DeskView.draw(WorkedScenes.scene(name), show, width);
                Document svg = Svg.parse(view.svg());
                Svg.assertPlain(svg);
                Element root = svg.getDocumentElement();
                Element title = Svg.all(svg, "title").get(0);
                Element desc = Svg.all(svg, "desc").get(0);
                assertEquals(title.getAttribute("id") + " " + desc.getAttribute("id"), root.getAttribute("aria-labelledby"));
                assertEquals("img", root.getAttribute("role"));
                assertEquals(view.alternative(), desc.getTextContent());
                assertEquals(String.valueOf(view.height()), root.getAttribute("height"));
            }
        }
    }

    @Test
    void theTextAlternativeSaysEachSettingItsMeaningAndItsState() {
        String words = DeskView.draw(WorkedScenes.scene("case-4"), Show.BOTH, DeskView.PAGE).alternative();
        assertTrue(words.contains("Desk 700 to 750: now 50 too low: keys 45 below elbow (a little off), proposed keys at elbow height (in range)"), words);
        assertTrue(words.contains("Thigh room: now minus 15: thigh meets the desk (out of range), proposed 30 free over thigh (in range)"), words);
        assertTrue(words.contains("As drawn now (worked out, not observed): head bent 27 degrees down"), words);
        assertTrue(words.endsWith("All lengths in mm."), words);
    }

    @Test
    void onlyWhatIsAskedForIsSaid() {
        DeskScene scene = WorkedScenes.scene("case-6");
        String now = DeskView.draw(scene, Show.PRESENT, DeskView.PAGE).alternative();
        String then = DeskView.draw(scene, Show.PROPOSED, DeskView.PAGE).alternative();
        assertFalse(now.contains("proposed"), now);
        assertFalse(then.contains("now "), then);
        assertFalse(then.contains("As drawn"), then);
    }

    @Test
    void withoutAProposalThePresentStateAloneIsDrawn() {
        DeskScene scene = WorkedScenes.asFoundWithout(WorkedScenes.scene("case-1"));
        DeskView view = DeskView.draw(scene, Show.BOTH, DeskView.PAGE);
        assertFalse(view.svg().contains("proposed"), view.alternative());
        assertTrue(view.alternative().contains("Seat 470: now 80 too high for the legs, 60 too low for the desk"), view.alternative());
    }

    @Test
    void partsThatWereNotMeasuredAreDottedAndNotJudged() {
        DeskView view = DeskView.draw(WorkedScenes.scene("case-1-unmeasured"), Show.BOTH, DeskView.PAGE);
        // lower leg, foot and arm, in both states
        assertEquals(6, dotted(view, "path"));
        assertTrue(view.alternative().contains("Seat 470 to 530: now lower leg not measured (not measured), proposed not judged (not measured)"));
        assertTrue(view.alternative().contains("Desk 740: now elbow not measured (not measured), proposed not judged (not measured)"));
        assertFalse(view.alternative().contains("feet hang"));
        assertEquals(0, dotted(DeskView.draw(WorkedScenes.scene("case-1"), Show.BOTH, DeskView.PAGE), "path"));
    }

    @Test
    void anArmWhoseElbowIsKnownIsNotCalledUnmeasured() {
        DeskScene scene = WorkedScenes.without(WorkedScenes.scene("case-6"), BodyMeasure.UPPER_ARM, BodyMeasure.FOREARM_HAND);
        DeskView view = DeskView.draw(scene, Show.BOTH, DeskView.PAGE);
        assertEquals(0, dotted(view, "path"));
        assertFalse(view.alternative().contains("upper arm"), view.alternative());
    }

    @Test
    void aDeskInRangeIsNotCalledTooHigh() {
        DeskScene s = WorkedScenes.scene("case-6");
        Map<Setting, Double> lower = new EnumMap<>(s.present().settings());
        lower.put(Setting.DESK_HEIGHT, 715.);
        DeskScene scene = new DeskScene(s.id(), s.title(), s.note(), s.posture(), s.glasses(), s.body(), s.present(),
                new DeskState(s.present().seat(), s.present().screen(), lower), s.bands());
        assertTrue(DeskView.draw(scene, Show.BOTH, DeskView.PAGE).alternative().contains("Desk 720 to 715: now keys at elbow height (in range)"));
    }

    @Test
    void furnitureThatWasNotMeasuredIsDottedAndNotJudged() {
        DeskScene scene = WorkedScenes.asFoundWithout(WorkedScenes.scene("case-1"), Setting.DESK_HEIGHT, Setting.SCREEN_DISTANCE);
        DeskView view = DeskView.draw(scene, Show.BOTH, DeskView.PAGE);
        assertTrue(dotted(view, "path") > 5);
        assertTrue(view.alternative().contains("Desk not measured: now desk height not measured (not measured)"), view.alternative());
        assertTrue(view.alternative().contains("Sight line not measured: now distance not measured, gaze not judged (not measured)"), view.alternative());
    }

    @Test
    void aSceneWithoutAnyNumberIsStillADrawing() {
        DeskScene empty = new DeskScene("empty", "Nothing measured", "", Posture.SITTING, Glasses.SINGLE, Map.of(), DeskState.of(Map.of()), null,
                BandContent.read());
        for (int width : new int[] {DeskView.PHONE, DeskView.PAGE}) {
            DeskView view = DeskView.draw(empty, Show.BOTH, width);
            Svg.assertPlain(Svg.parse(view.svg()));
            assertFalse(view.alternative().contains("in range"), view.alternative());
            assertFalse(view.alternative().contains("off"), view.alternative());
        }
    }

    @Test
    void textFromThePageCannotBreakTheDrawing() {
        DeskScene s = WorkedScenes.scene("case-1");
        DeskScene hostile = new DeskScene("x", "<script>\"&'", "a < b & c", s.posture(), s.glasses(), s.body(), s.present(), s.proposed(), s.bands());
        Svg.assertPlain(Svg.parse(DeskView.draw(hostile, Show.BOTH, DeskView.PAGE).svg()));
    }

    private static long dotted(DeskView view, String element) {
        return Svg.all(Svg.parse(view.svg()), element).stream().filter(e -> e.getAttribute("stroke-dasharray").equals(Ink.DOTS)).count();
    }

    @Test
    void labelsNeverOverlapOnRandomWorkPlaces() {
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            DeskScene scene = random(random, i);
            for (int width : new int[] {DeskView.PAGE, DeskView.PHONE}) {
                DeskView view = DeskView.draw(scene, Show.BOTH, width);
                Map<String, List<Double>> columns = new TreeMap<>();
                for (Element text : Svg.all(Svg.parse(view.svg()), "text")) {
                    if (Double.parseDouble(text.getAttribute("font-size")) >= 11.5 && text.getAttribute("stroke").isEmpty()) {
                        columns.computeIfAbsent(text.getAttribute("x"), k -> new ArrayList<>()).add(Double.parseDouble(text.getAttribute("y")));
                    }
                }
                for (Map.Entry<String, List<Double>> column : columns.entrySet()) {
                    List<Double> ys = column.getValue();
                    Collections.sort(ys);
                    for (int k = 1; k < ys.size(); k++) {
                        assertTrue(ys.get(k) - ys.get(k - 1) > 11, "scene " + i + " width " + width + " x " + column.getKey() + ": " + ys);
                    }
                    assertTrue(ys.get(ys.size() - 1) < view.height(), "scene " + i + " width " + width + ": below the page");
                }
            }
        }
    }

    private static DeskScene random(Random random, int i) {
        Map<BodyMeasure, Double> body = new EnumMap<>(BodyMeasure.class);
        body.put(BodyMeasure.STATURE, between(random, 1420, 2000));
        body.put(BodyMeasure.SHOE, between(random, 0, 50));
        body.put(BodyMeasure.UPPER_ARM, between(random, 300, 400));
        body.put(BodyMeasure.FOREARM_HAND, between(random, 380, 520));
        sometimes(random, body, BodyMeasure.POPLITEAL, 340, 510);
        sometimes(random, body, BodyMeasure.ELBOW_REST, 170, 310);
        sometimes(random, body, BodyMeasure.EYE_SITTING, 660, 880);
        sometimes(random, body, BodyMeasure.BUTTOCK_POPLITEAL, 420, 570);
        sometimes(random, body, BodyMeasure.THIGH, 115, 210);
        return new DeskScene("r" + i, "r", "", Posture.SITTING, random.nextBoolean() ? Glasses.SINGLE : Glasses.PROGRESSIVE, body,
                state(random), state(random), BandContent.read());
    }

    private static void sometimes(Random random, Map<BodyMeasure, Double> body, BodyMeasure measure, double low, double high) {
        double value = between(random, low, high);
        if (random.nextDouble() >= .08) {
            body.put(measure, value);
        }
    }

    private static DeskState state(Random random) {
        Map<Setting, Double> s = new EnumMap<>(Setting.class);
        s.put(Setting.SEAT_HEIGHT, between(random, 380, 600));
        s.put(Setting.SEAT_DEPTH, between(random, 380, 500));
        s.put(Setting.ARMREST, random.nextBoolean() ? 0 : between(random, 160, 300));
        s.put(Setting.DESK_HEIGHT, between(random, 620, 850));
        s.put(Setting.DESK_THICKNESS, 30.);
        s.put(Setting.HOME_ROW, 30.);
        s.put(Setting.SCREEN_TOP, between(random, 950, 1450));
        s.put(Setting.SCREEN_HEIGHT, between(random, 190, 420));
        s.put(Setting.SCREEN_DISTANCE, between(random, 350, 1000));
        s.put(Setting.FOOTREST_HEIGHT, random.nextInt(3) > 0 ? 0 : between(random, 40, 200));
        s.put(Setting.FOOTREST_ANGLE, between(random, 0, 15));
        s.put(Setting.CUSHION, random.nextInt(3) > 0 ? 0. : 50);
        return DeskState.of(s);
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
