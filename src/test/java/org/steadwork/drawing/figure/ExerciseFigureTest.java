package org.steadwork.drawing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ExerciseFigureTest {

    /** Half of the last digit of the positions to compare with. */
    private static final double HALF_OF_THE_LAST_DIGIT = 0.005 + 1e-9;
    /** A hand may end this far from its place, in hundredths of stature: a straight arm just short of the floor. */
    private static final double SHORT_REACH = 1.2;

    static List<String> keys() {
        return FigureContent.keys().toList();
    }

    @Test
    void everyExerciseHasItsFigure() {
        assertEquals(61, keys().size());
    }

    @ParameterizedTest
    @MethodSource("keys")
    void drawsAWellFormedPictureWithNumberedFramesAndNoStyleOrScript(String key) throws Exception {
        for (String svg : List.of(FigureContent.figure(key).svg(), FigureContent.figure(key).mirrored())) {
            Document picture = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
            NodeList all = picture.getElementsByTagName("*");
            int numbers = 0;
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                assertFalse(List.of("style", "script", "image").contains(element.getTagName()), element.getTagName());
                for (int a = 0; a < element.getAttributes().getLength(); a++) {
                    String name = element.getAttributes().item(a).getNodeName();
                    assertFalse(name.equals("style") || name.startsWith("on"), name);
                    assertFalse(element.getAttributes().item(a).getNodeValue().contains("NaN"), svg);
                }
                if (element.getTagName().equals("text") && element.getTextContent().matches("\\d")) {
                    numbers++;
                }
            }
            assertEquals(FigureContent.figureData(key).frames(), numbers, "numbered frames of " + key);
        }
    }

    @ParameterizedTest
    @MethodSource("keys")
    void posesAreWithinHealthyRangesReachTheirPlacesAndDoNotFallOver(String key) {
        for (String doubt : FigureContent.figure(key).doubts()) {
            assertTrue(doubt.matches(".*arm [RL]: target [\\d.]+ out of reach"), doubt);
            double miss = Double.parseDouble(doubt.replaceAll(".*target ([\\d.]+) out.*", "$1"));
            assertTrue(miss <= SHORT_REACH, doubt);
        }
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvFileSource(resources = "joint-positions.csv", useHeadersInDisplayName = true)
    void jointsLieWhereTheStudyPutsThem(String exercise, int frame, String anchor, double x, double y, double z) {
        Vec3 at = FigureContent.figure(exercise).skeletons().get(frame - 1).joints().point(anchor);
        assertEquals(x, at.x(), HALF_OF_THE_LAST_DIGIT);
        assertEquals(y, at.y(), HALF_OF_THE_LAST_DIGIT);
        assertEquals(z, at.z(), HALF_OF_THE_LAST_DIGIT);
    }

    @Test
    void anArrowFollowsTheMovement() {
        String svg = FigureContent.figure("sh_lateral_raise_band").svg();
        assertEquals(2, svg.split("stroke=\"#6b2d5c\" stroke-width=\"3.6\"", -1).length - 1, "one arrow for each arm");
    }

    @Test
    void theMirroredFigureTurnsTheDrawingButNotTheNumbers() {
        String svg = FigureContent.figure("af_heel_raise").mirrored();
        assertTrue(svg.contains("scale(-1 1)"));
        int number = svg.indexOf("<text");
        assertTrue(svg.lastIndexOf("</g>", number) > svg.indexOf("scale(-1 1)"), "the number stands outside the mirrored group");
    }

    @Test
    void wrongDataAreNamed() {
        Map<String, ?> none = Map.of();
        assertTrue(message(none, Map.of("frames", List.of(Map.of("base", "hover")))).contains("no preset 'hover'"));
        assertTrue(message(none, Map.of("frames", List.of(Map.of("hand", "tail_R")))).contains("no anchor 'tail_R'"));
        assertTrue(message(none, Map.of("frames", List.of(Map.of("knee.flex", "much")))).contains("'knee.flex' must be a number"));
        assertTrue(message(none, Map.of("frames", List.of(Map.of("view", "below")))).contains("no view 'below'"));
        assertTrue(message(none, Map.of("frames", List.of())).contains("at least one frame"));
        ExerciseFigure typo = ExerciseFigure.of("x", none, Map.of("frames", List.of(Map.of("knee.bend", 20, "elbow.flex", 170))));
        assertEquals(List.of("x, frame 1: elbow.flex of 170.0° is outside 0.0° to 150.0°", "x, frame 1: there is no joint 'knee.bend'"),
                typo.doubts().stream().sorted().toList());
    }

    private static String message(Map<String, ?> presets, Map<String, ?> data) {
        return assertThrows(IllegalArgumentException.class, () -> ExerciseFigure.of("x", presets, data).svg()).getMessage();
    }
}
