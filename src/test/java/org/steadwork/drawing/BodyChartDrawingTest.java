package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class BodyChartDrawingTest {

    private final BodyChartContent content = new BodyChartContent();
    private final BodyChart chart = content.chart();
    private final BodyChartDrawing drawing = new BodyChartDrawing(content);
    private final List<Mark> marks = List.of(new Mark("neck", 6, Set.of(SymptomKind.SHARP_OR_BURNING)),
            new Mark("low_back", 5, EnumSet.allOf(SymptomKind.class)), new Mark("calf_l", null, Set.of()),
            new Mark("knee_r", 0, Set.of()));

    @Test
    void everyZoneIsAButtonWithItsWordsAndExactlyOneIsATabStop() throws Exception {
        List<Element> zones = zones(read(drawing.interactive("bc", marks)));
        assertEquals(chart.zones().stream().map(Zone::key).toList(),
                zones.stream().map(zone -> zone.getAttribute("data-zone")).toList());
        for (Element zone : zones) {
            assertEquals("button", zone.getAttribute("role"));
            assertTrue(zone.getAttribute("aria-label").startsWith(chart.zone(zone.getAttribute("data-zone")).label() + ", "));
        }
        assertEquals(List.of("knee_r"), zones.stream().filter(zone -> zone.getAttribute("tabindex").equals("0"))
                .map(zone -> zone.getAttribute("data-zone")).toList());
        assertEquals(49, zones.stream().filter(zone -> zone.getAttribute("tabindex").equals("-1")).count());
    }

    @Test
    void arrowsInTheDrawingReachEveryZone() throws Exception {
        Document picture = read(drawing.interactive("bc", List.of()));
        Set<String> seen = new HashSet<>(Set.of("head"));
        List<String> open = new ArrayList<>(seen);
        while (!open.isEmpty()) {
            String key = open.remove(0);
            Element zone = zones(picture).stream().filter(it -> it.getAttribute("data-zone").equals(key)).findFirst().orElseThrow();
            Stream.of("up", "down", "left", "right").map(way -> zone.getAttribute("data-" + way))
                    .filter(next -> !next.isEmpty() && seen.add(next)).forEach(open::add);
        }
        assertEquals(50, seen.size());
    }

    @Test
    void aMarkIsToldByColourPatternNumberAndWords() throws Exception {
        Document picture = read(drawing.interactive("bc", marks));
        Element low = zone(picture, "low_back");
        assertEquals("Low back, back view: pain 5 of 10, ache, sharp or burning, tingling or numb, stiffness",
                low.getAttribute("aria-label"));
        assertEquals("#c085b2", part(low, "use", "class", "bc-area").getAttribute("fill"));
        for (String kind : List.of("ache", "tingling_or_numb", "stiffness")) {
            assertFalse(part(low, "use", "data-kind", kind).hasAttribute("display"), kind);
        }
        assertEquals("none", part(low, "use", "class", "bc-unsaid").getAttribute("display"));
        assertEquals("5", disc(picture, "low_back").getTextContent());
        assertEquals("none", disc(picture, "chest").getAttribute("display"));
    }

    @Test
    void notAskedIsDrawnDashedAndUnfilledAndNeverAsNought() throws Exception {
        Document picture = read(drawing.interactive("bc", marks));
        Element calf = zone(picture, "calf_l");
        assertEquals(BodyPalette.SKIN, part(calf, "use", "class", "bc-area").getAttribute("fill"));
        assertFalse(part(calf, "use", "class", "bc-unsaid").hasAttribute("display"));
        assertEquals("?", disc(picture, "calf_l").getTextContent());
        assertEquals("0", disc(picture, "knee_r").getTextContent());
        assertEquals("none", part(zone(picture, "knee_r"), "use", "class", "bc-unsaid").getAttribute("display"));
    }

    @Test
    void everyDrawingIsWellFormedAndHoldsNoStyleNoScriptAndNoHandler() throws Exception {
        for (String svg : drawings()) {
            elements(read(svg)).forEach(element -> {
                assertFalse(Set.of("style", "script").contains(element.getTagName()), element.getTagName());
                for (int i = 0; i < element.getAttributes().getLength(); i++) {
                    String name = element.getAttributes().item(i).getNodeName();
                    assertFalse(name.equals("style") || name.startsWith("on"), name);
                }
            });
        }
    }

    @Test
    void drawingsForPrintHaveNoPatternNoClipAndNoTransparency() throws Exception {
        for (String svg : List.of(drawing.still("st", marks), drawing.strip("sp", moments()))) {
            elements(read(svg)).forEach(element -> {
                assertFalse(Set.of("pattern", "clipPath", "use").contains(element.getTagName()), element.getTagName());
                for (String name : List.of("opacity", "fill-opacity", "stroke-opacity", "filter", "clip-path")) {
                    assertFalse(element.hasAttribute(name), name);
                }
                assertFalse(element.getAttribute("fill").startsWith("url"), element.getTagName());
            });
        }
    }

    @Test
    void twoChartsShareNoId() throws Exception {
        Set<String> ids = new HashSet<>();
        for (String svg : List.of(drawing.interactive("one", marks), drawing.interactive("two", marks),
                drawing.still("three", marks), drawing.strip("four", moments()))) {
            elements(read(svg)).stream().map(element -> element.getAttribute("id")).filter(id -> !id.isEmpty())
                    .forEach(id -> assertTrue(ids.add(id), id));
        }
        assertTrue(ids.contains("one-low_back") && ids.contains("two-low_back"));
    }

    @Test
    void everyReferenceInsideTheDrawingIsThere() throws Exception {
        Document picture = read(drawing.interactive("bc", marks));
        Set<String> ids = new HashSet<>();
        elements(picture).forEach(element -> ids.add(element.getAttribute("id")));
        for (Element element : elements(picture)) {
            if (element.hasAttribute("href")) {
                assertTrue(ids.contains(element.getAttribute("href").substring(1)), element.getAttribute("href"));
            }
            for (String name : List.of("fill", "clip-path")) {
                String value = element.getAttribute(name);
                assertTrue(!value.startsWith("url(") || ids.contains(value.substring(5, value.length() - 1)), value);
            }
        }
    }

    @Test
    void theStripShowsOnlyViewsThatCarryAMarkAndSaysEachReportInWords() {
        List<Mark> back = List.of(new Mark("low_back", 5, Set.of(SymptomKind.ACHE)));
        String strip = drawing.strip("sp", List.of(new ChartMoment("Previous", "1 May 2030", back),
                new ChartMoment("Now", "8 May 2030", List.of())));
        assertTrue(strip.contains("Seen from behind"));
        assertTrue(strip.contains("Previous, 1 May 2030: Low back: pain 5 of 10, ache. Now, 8 May 2030: No zone is marked"));
        assertEquals(Set.of(View.FRONT, View.BACK), drawing.views(marks));
    }

    @Test
    void wordsPutTheWorstFirstAndNotAskedLast() {
        assertEquals("Back of neck: pain 6 of 10, sharp or burning; Low back: pain 5 of 10, ache, sharp or burning, tingling or"
                + " numb, stiffness; Right knee: no pain; Left calf: pain not asked, kind not said", drawing.words(marks));
    }

    @Test
    void aZoneThatIsNotOnTheChartIsRefusedInsteadOfHidden() {
        List<Mark> unknown = List.of(new Mark("tail", 3, Set.of()));
        assertThrows(IllegalArgumentException.class, () -> drawing.interactive("bc", unknown));
        assertThrows(IllegalArgumentException.class, () -> drawing.still("bc", unknown));
        assertThrows(IllegalArgumentException.class, () -> drawing.still("b c\"", List.of()));
    }

    private List<ChartMoment> moments() {
        return List.of(new ChartMoment("<Previous> & \"so\"", "1 May 2030", marks), new ChartMoment("Now", "8 May 2030", marks));
    }

    private List<String> drawings() {
        return List.of(drawing.interactive("bc", marks), drawing.still("st", marks), drawing.strip("sp", moments()),
                drawing.small("sm", marks, EnumSet.allOf(View.class)), drawing.ramp(), drawing.swatch(null),
                drawing.swatch(SymptomKind.ACHE), drawing.swatch(SymptomKind.STIFFNESS),
                drawing.swatch(SymptomKind.TINGLING_OR_NUMB), drawing.swatch(SymptomKind.SHARP_OR_BURNING));
    }

    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> zones(Document picture) {
        return elements(picture).stream().filter(element -> element.hasAttribute("data-zone")).toList();
    }

    private static Element zone(Document picture, String key) {
        return zones(picture).stream().filter(it -> it.getAttribute("data-zone").equals(key)).findFirst().orElseThrow();
    }

    private static Element disc(Document picture, String key) {
        return elements(picture).stream().filter(it -> it.getAttribute("data-mark").equals(key)).findFirst().orElseThrow();
    }

    private static Element part(Element zone, String tag, String attribute, String value) {
        return below(zone).stream()
                .filter(it -> it.getTagName().equals(tag) && it.getAttribute(attribute).equals(value)).findFirst().orElseThrow();
    }

    private static List<Element> elements(Document picture) {
        List<Element> found = new ArrayList<>(List.of(picture.getDocumentElement()));
        found.addAll(below(picture.getDocumentElement()));
        return found;
    }

    private static List<Element> below(Element element) {
        NodeList all = element.getElementsByTagName("*");
        return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).toList();
    }
}
