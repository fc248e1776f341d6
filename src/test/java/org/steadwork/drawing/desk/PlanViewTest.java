package org.steadwork.drawing.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.steadwork.drawing.LabelPlaces;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PlanViewTest {

    private static final PlanBands BANDS = PlanBands.read();

    /** Two screens used with progressive lenses. Source: worked by hand for this project; body and desk are invented. */
    private static PlanScene twoScreens() {
        PlanState now = new PlanState(300, List.of(new PlanScreen(530, 0, 700, 0, true, false), new PlanScreen(530, 545, 700, 0, false, false)),
                new PlanThing(-45, 440, 440), new PlanThing(520, 440, 64), null, null, new PlanWindow(35, PlanWindow.Where.LEFT));
        PlanState then = new PlanState(290, List.of(new PlanScreen(530, -265, 745, 20, true, true), new PlanScreen(530, 265, 745, 20, true, true)),
                new PlanThing(0, 430, 300), new PlanThing(300, 420, 64), null, null, new PlanWindow(5, PlanWindow.Where.LEFT));
        return new PlanScene("case-9", "Two screens", new PlanBody(440, 455, 640, false), 1500, 800, now, then, BANDS);
    }

    @Test
    void theWordsSayWhatTheNumbersGiveByHand() {
        // by hand: atan(545 / 700) = 37.9 deg, its length 887.2; 520 - 220 = 300; elbow at 224.4, 20: hypot(295.6, 420) = 513.6;
        // touching, turned 20 deg in: middle at 265 cos 20 = 249.0, 745 - 265 sin 20 = 654.4: 20.8 deg, 700.2; hypot(75.6, 400) = 407.1
        assertEquals("Now: Main screen straight ahead, at 700 (in range); Side screen 38 degrees right, at 887, 38 degrees off square (out of range); "
                + "Keys 45 left of the midline (a little off); Pointer 300 outside the shoulder line (out of range); "
                + "Pointer 514 from the elbow, everyday reach 455 (a little off); Window 35 degrees off parallel to the sight line (a little off). "
                + "Proposed: Left screen 21 degrees left, at 700 (in range); Right screen 21 degrees right, at 700 (in range); "
                + "Keys on the midline (in range); Pointer 80 outside the shoulder line (in range); "
                + "Pointer 407 from the elbow, everyday reach 455 (in range); Window 5 degrees off parallel to the sight line (in range). "
                + "Lengths in mm; where the person sits is worked out from the reach.", PlanView.draw(twoScreens(), Show.BOTH, 1100).alternative());
    }

    @Test
    void everyWidthIsPlainSvgAndItsWordsStandClear() {
        for (int width : new int[] {360, 460, 1100}) {
            for (Show show : Show.values()) {
                PlanView view = PlanView.draw(twoScreens(), show, width);
                Document svg = Svg.parse(view.svg());
                Svg.assertPlain(svg);
                assertEquals(view.alternative(), Svg.all(svg, "desc").get(0).getTextContent());
                assertTrue(Svg.all(svg, "pattern").isEmpty() && Svg.all(svg, "clipPath").isEmpty());
                assertWordsStandClear(svg, width, show + " " + width);
            }
        }
    }

    private static void assertWordsStandClear(Document svg, int width, String what) {
        List<Rectangle2D> boxes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Element text : Svg.all(svg, "text")) {
            if (text.hasAttribute("stroke")) {
                continue;
            }
            String anchor = text.hasAttribute("text-anchor") ? text.getAttribute("text-anchor") : "start";
            Rectangle2D box = LabelPlaces.Place.of(Double.parseDouble(text.getAttribute("x")), Double.parseDouble(text.getAttribute("y")), anchor,
                    text.getTextContent(), Double.parseDouble(text.getAttribute("font-size")), text.hasAttribute("font-weight")).box();
            assertTrue(box.getMinX() >= 0 && box.getMaxX() <= width, what + " leaves the page: " + text.getTextContent());
            for (int i = 0; i < boxes.size(); i++) {
                assertFalse(boxes.get(i).intersects(box), what + ": '" + words.get(i) + "' meets '" + text.getTextContent() + "'");
            }
            boxes.add(box);
            words.add(text.getTextContent());
        }
    }

    private static PlanState mirrored(PlanState s) {
        List<PlanScreen> screens = new ArrayList<>();
        s.screens().forEach(f -> screens.add(0, new PlanScreen(f.width(), -f.offset(), f.distance(), f.turn(), f.main(), f.touching())));
        return new PlanState(s.edge(), screens, mirrored(s.keyboard()), mirrored(s.pointer()), mirrored(s.papers()), mirrored(s.phone()), s.window());
    }

    private static PlanThing mirrored(PlanThing thing) {
        return thing == null ? null : new PlanThing(-thing.aside(), thing.ahead(), thing.width());
    }

    private static PlanState random(Random random) {
        List<PlanScreen> screens = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            screens.add(new PlanScreen(300 + random.nextInt(500), random.nextInt(1201) - 600.5, 350 + random.nextInt(700), random.nextInt(40),
                    random.nextBoolean(), random.nextBoolean()));
        }
        return new PlanState(200 + random.nextInt(200), screens, thing(random), thing(random), random.nextBoolean() ? thing(random) : null,
                random.nextBoolean() ? thing(random) : null, new PlanWindow(random.nextInt(91), PlanWindow.Where.AHEAD));
    }

    private static PlanThing thing(Random random) {
        return new PlanThing(random.nextInt(1001) - 500.5, 300 + random.nextInt(500), 60 + random.nextInt(300));
    }

    @Test
    void aMirroredDeskHasMirroredFindings() {
        Random random = new Random(20301219);
        PlanBody body = new PlanBody(440, 455, 640, false);
        for (int round = 0; round < 500; round++) {
            PlanState state = random(random);
            List<String> plain = sides(PlanFindings.of(new PlanGeometry(body, state), BANDS));
            List<String> mirror = sides(PlanFindings.of(new PlanGeometry(body, mirrored(state)), BANDS)).stream()
                    .map(line -> line.replace("left", "*").replace("right", "left").replace("*", "right")
                            .replace("Left", "*").replace("Right", "Left").replace("*", "Right")).sorted().toList();
            assertEquals(plain, mirror, state.toString());
        }
    }

    private static List<String> sides(List<PlanFindings.Line> lines) {
        return lines.stream().map(line -> line.text() + " " + line.state()).sorted().toList();
    }

    @Test
    void aScreenTurnedToTheEyeIsSquare() {
        PlanScreen turned = new PlanScreen(500, 400, 600, Math.toDegrees(Math.atan2(400, 600)), true, false);
        PlanGeometry geometry = new PlanGeometry(new PlanBody(440, 455, 640, false),
                new PlanState(300, List.of(turned), new PlanThing(0, 430, 440), null, null, null, null));
        assertEquals(0, geometry.faces.get(0).off(), 1e-9);
        assertEquals(Math.hypot(400, 600), geometry.faces.get(0).distance(), 1e-9);
    }

    @Test
    void whatWasNotLookedAtIsSaidAndNotJudged() {
        PlanState bare = new PlanState(300, List.of(), new PlanThing(0, 430, 440), null, null, null, null);
        PlanScene scene = new PlanScene("bare", "Bare", PlanBody.of(Map.of(BodyMeasure.STATURE, 1700.), null), 1600, 800, bare, null, BANDS);
        PlanView view = PlanView.draw(scene, Show.BOTH, 1100);
        assertTrue(view.alternative().contains("Screens not looked at from above (not measured)"), view.alternative());
        assertTrue(view.alternative().contains("Pointer not looked at from above (not measured)"), view.alternative());
        assertTrue(view.alternative().contains("Window not looked at (not measured)"), view.alternative());
        assertFalse(view.alternative().contains("Proposed"), view.alternative());
        assertTrue(view.svg().contains("Reach is estimated from stature."));
    }

    @Test
    void theEdgeNeverLiesInTheTrunkAndTheKeysWhereTheUpperArmsHang() {
        PlanBody body = new PlanBody(440, 455, 640, false);
        assertEquals(429.5, body.keysAhead(), 1e-9);
        assertEquals(289.5, body.edgeAhead(140), 1e-9);
        assertEquals(130, body.edgeAhead(400), 1e-9);
    }

    @Test
    void impossibleNumbersAreRefused() {
        for (double bad : new double[] {Double.NaN, -2001, 2001}) {
            assertThrows(IllegalArgumentException.class, () -> new PlanThing(bad, 300, 100));
            assertThrows(IllegalArgumentException.class, () -> new PlanScreen(500, bad, 600, 0, true, false));
        }
        assertThrows(IllegalArgumentException.class, () -> new PlanWindow(91, PlanWindow.Where.LEFT));
        assertThrows(IllegalArgumentException.class, () -> new PlanBody(Double.NaN, 455, 640, false));
        assertThrows(IllegalArgumentException.class, () -> PlanView.draw(twoScreens(), Show.BOTH, 299));
    }
}
