package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

class TrendChartTest {

    private static final LocalDate START = LocalDate.of(2030, 3, 4);
    private static final String PLUM = "#6b2d5c";
    private static final String INK = "#1d2733";
    private static final String PAPER = "#faf7f2";
    private static final String BAND = "#e8e6e3";

    /** One visit a week; null where no score was due. */
    private static Trend trend(Double... scores) {
        return trend(true, 9.4, 14., scores);
    }

    private static Trend trend(boolean lowerIsBetter, Double error, Double importance, Double... scores) {
        List<Trend.Visit> visits = new ArrayList<>();
        for (int i = 0; i < scores.length; i++) {
            visits.add(new Trend.Visit(START.plusWeeks(i), scores[i]));
        }
        return new Trend("ndi", "Neck disability <NDI> & more", "%", 0, 100, lowerIsBetter, 0, visits, error, importance);
    }

    private static Document parse(String svg) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static List<Element> all(Node node, String name) {
        List<Element> found = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                if (name.equals("*") || element.getTagName().equals(name)) {
                    found.add(element);
                }
                found.addAll(all(element, name));
            }
        }
        return found;
    }

    private static long groups(String svg, String attribute, String value) {
        return all(parse(svg), "g").stream().filter(g -> g.getAttribute(attribute).equals(value)).count();
    }

    private static long points(String svg) {
        return groups(svg, "fill", PLUM);
    }

    private static long lines(String svg) {
        return groups(svg, "stroke", PLUM);
    }

    @Test
    void everySizeIsPlainSvgWithATextAlternative() {
        for (TrendSize size : TrendSize.values()) {
            String svg = TrendChart.draw(trend(34., null, 22., 12.), size);
            Document document = parse(svg);
            for (Element element : all(document, "*")) {
                for (String attribute : List.of("style", "opacity", "fill-opacity", "stroke-opacity", "font-family", "clip-path")) {
                    assertTrue(element.getTagName().equals("svg") || !element.hasAttribute(attribute), element.getTagName() + " has " + attribute);
                }
                assertFalse(List.of("style", "script", "defs").contains(element.getTagName()));
            }
            Element root = document.getDocumentElement();
            assertFalse(root.hasAttribute("style"));
            assertEquals(size.cssClass, root.getAttribute("class"));
            assertEquals("Neck disability <NDI> & more", all(document, "title").get(0).getTextContent());
            assertEquals(TrendChart.alternative(trend(34., null, 22., 12.)), all(document, "desc").get(0).getTextContent());
        }
    }

    @Test
    void aVisitWithoutAScoreIsAnOpenSquareAndNeverAPoint() {
        String svg = TrendChart.draw(trend(34., null, 22., null, 12.), TrendSize.WIDE);
        assertEquals(3, points(svg));
        assertEquals(3, groups(svg, "fill", INK));
        assertEquals(2, groups(svg, "fill", PAPER));
        assertFalse(all(parse(svg), "text").stream().anyMatch(t -> t.getAttribute("class").equals("t-p") && t.getTextContent().equals("0")));
        assertTrue(TrendChart.alternative(trend(34., null)).contains("11 Mar 2030: no score"));
    }

    @Test
    void aScoreOfZeroIsAPoint() {
        String svg = TrendChart.draw(trend(34., 0., 12.), TrendSize.WIDE);
        assertEquals(3, points(svg));
        assertTrue(all(parse(svg), "text").stream().anyMatch(t -> t.getAttribute("class").equals("t-p") && t.getTextContent().equals("0")));
    }

    @Test
    void theLineLeavesOutWhatIsMissingInsteadOfFallingToZero() {
        String svg = TrendChart.draw(trend(34., null, 22., null, 12.), TrendSize.WIDE);
        Element line = (Element) all(parse(svg), "g").stream().filter(g -> g.getAttribute("stroke").equals(PLUM)).findFirst().orElseThrow();
        String d = all(line, "path").get(0).getAttribute("d");
        String[] corners = d.substring(1).split("L");
        assertEquals(3, corners.length, d);
        // 34, 22 and 12 of 100, at the height of the plot area: evenly scaled from the axis upwards
        double y34 = Double.parseDouble(corners[0].split(",")[1]);
        double y22 = Double.parseDouble(corners[1].split(",")[1]);
        double y12 = Double.parseDouble(corners[2].split(",")[1]);
        assertEquals(12. / 10, (y22 - y34) / (y12 - y22), .01, d);
        double zero = y12 + (y12 - y22) / 10 * 12;
        assertEquals(262, zero, .5);
    }

    @Test
    void twoScoresAreTwoPointsWithoutALine() {
        assertEquals(0, lines(TrendChart.draw(trend(34., 22.), TrendSize.WIDE)));
        assertEquals(0, lines(TrendChart.draw(trend(34., null, null, 22.), TrendSize.SMALL)));
        assertEquals(1, lines(TrendChart.draw(trend(34., 22., 12.), TrendSize.SMALL)));
        assertTrue(TrendChart.alternative(trend(34., 22.)).contains("Fewer than three scores: no line is drawn"));
    }

    @Test
    void bandAndImportanceStandAroundTheFirstScore() {
        String svg = TrendChart.draw(trend(null, 34., 22., 12.), TrendSize.WIDE);
        Element band = all(parse(svg), "rect").stream().filter(r -> r.getAttribute("fill").equals(BAND)).findFirst().orElseThrow();
        // 18.8 of 100 over 246 units of plot height
        assertEquals(18.8 * 2.46, Double.parseDouble(band.getAttribute("height")), .15);
        assertTrue(svg.contains("34 ± 9.4 %: no real change"));
        assertTrue(svg.contains("Important from 20 %"));
        assertTrue(TrendChart.draw(trend(false, 9.4, 14., 34., 40.), TrendSize.WIDE).contains("Important from 48 %"));
    }

    @Test
    void withoutKnownErrorOrImportanceNothingIsDrawnForThem() {
        String svg = TrendChart.draw(trend(true, null, null, 34., 22., 12.), TrendSize.WIDE);
        assertFalse(svg.contains(BAND));
        assertFalse(svg.contains("7,4"));
        assertFalse(svg.contains("error"));
    }

    @Test
    void anImportantChangeBeyondTheInstrumentIsSaidAndNotDrawn() {
        Trend low = trend(true, 9.4, 14., 10., 9., 8.);
        assertFalse(TrendChart.draw(low, TrendSize.WIDE).contains("7,4"));
        assertTrue(TrendChart.alternative(low).contains("An important change, 14 or more from 10 %, lies beyond the instrument and cannot show"));
    }

    @Test
    void aTrendWithoutAnyScoreShowsItsVisitsOnly() {
        String svg = TrendChart.draw(trend(null, null), TrendSize.WIDE);
        assertEquals(0, points(svg));
        assertEquals(2, groups(svg, "fill", PAPER));
        assertFalse(svg.contains(BAND));
    }

    @Test
    void onlyTheLastValueIsLabelledInASmallChart() {
        long values = all(parse(TrendChart.draw(trend(34., 22., 12.), TrendSize.SMALL)), "text").stream()
                .filter(t -> t.getAttribute("class").equals("t-p") && !t.hasAttribute("aria-hidden")).count();
        assertEquals(1, values);
    }

    private static Trend marked(PlanMark... marks) {
        Trend plain = trend(34., null, 22., 12.);
        return new Trend("ndi", plain.measure(), "%", 0, 100, true, 0, plain.visits(), 9.4, 14., List.of(marks));
    }

    private static PlanMark mark(int day, PlanMark.Kind kind, String text) {
        return new PlanMark(START.plusDays(day), kind, text);
    }

    private static List<String> texts(String svg) {
        return all(parse(svg), "text").stream().map(Node::getTextContent).toList();
    }

    @Test
    void changesOfPlanAreLetteredByDateAndSaidInKeyAndWords() {
        Trend trend = marked(mark(14, PlanMark.Kind.WORK_STATUS, "Half days"), mark(3, PlanMark.Kind.WORK_PLACE, "Screen raised 80 mm"));
        String wide = TrendChart.draw(trend, TrendSize.WIDE);
        assertTrue(texts(wide).contains("7 Mar 2030 · Work place: Screen raised 80 mm"));
        assertTrue(texts(wide).contains("18 Mar 2030 · Work status: Half days"));
        assertEquals(2, texts(wide).stream().filter("A"::equals).count(), "over the plot and in the key");
        String small = TrendChart.draw(trend, TrendSize.SMALL);
        assertEquals(1, texts(small).stream().filter("A"::equals).count(), "over the plot only");
        assertFalse(small.contains("Half days</text>"));
        assertTrue(TrendChart.alternative(trend).endsWith("Changes of plan: A, 7 Mar 2030, work place: Screen raised 80 mm; "
                + "B, 18 Mar 2030, work status: Half days."));
        assertFalse(TrendChart.alternative(trend(34.)).contains("Changes of plan"));
    }

    @Test
    void aTrendForOtherReadersHasNoChangesOfThePlan() {
        Trend trend = marked(mark(14, PlanMark.Kind.WORK_STATUS, "Half days")).withoutMarks();
        String svg = TrendChart.draw(trend, TrendSize.MIDDLE);
        assertFalse(svg.contains("Half days") || texts(svg).contains("A"), svg);
        assertEquals(TrendChart.draw(marked(), TrendSize.MIDDLE), svg, "nothing else is lost");
    }

    @Test
    void scoresHaveTheDecimalsOfTheMeasure() {
        List<Trend.Visit> visits = List.of(new Trend.Visit(START, 3.7), new Trend.Visit(START.plusDays(14), 5.), new Trend.Visit(START.plusDays(28), 6.25));
        String tenths = TrendChart.draw(new Trend("psfs", "Own activities", "", 0, 10, false, 1, visits, null, null), TrendSize.WIDE);
        assertTrue(texts(tenths).containsAll(List.of("3.7", "5.0", "6.3")), texts(tenths).toString());
        String whole = TrendChart.draw(new Trend("ndi", "Neck", "", 0, 10, true, 0, visits, null, null), TrendSize.WIDE);
        assertTrue(texts(whole).contains("3.7"), "a whole-numbered score that was computed keeps its tenth: " + texts(whole));
        assertFalse(texts(whole).contains("5.0"), texts(whole).toString());
    }

    @Test
    void everyKindOfChangeHasAShapeOfItsOwn() {
        Trend bare = marked();
        for (PlanMark.Kind kind : PlanMark.Kind.values()) {
            String svg = TrendChart.draw(marked(mark(7, kind, "change")), TrendSize.TINY);
            String shape = switch (kind) {
                case PROGRAMME -> "circle";
                case WORK_PLACE -> "rect";
                case WORK_STATUS, OTHER -> "polygon";
            };
            assertEquals(1, all(parse(svg), shape).size() - all(parse(TrendChart.draw(bare, TrendSize.TINY)), shape).size(), kind.name());
        }
    }

    @Test
    void aMarkStandsOnItsDayEvenBeforeTheFirstAndAfterTheLastVisit() {
        Trend trend = marked(mark(-21, PlanMark.Kind.WORK_STATUS, "Off work"), mark(0, PlanMark.Kind.PROGRAMME, "First"),
                mark(21 + 42, PlanMark.Kind.WORK_STATUS, "Full hours"));
        String svg = TrendChart.draw(trend, TrendSize.WIDE);
        double[] x = all(parse(svg), "line").stream().filter(line -> line.getAttribute("stroke").equals("#a39d92"))
                .mapToDouble(line -> Double.parseDouble(line.getAttribute("x1"))).sorted().toArray();
        assertEquals(3, x.length, svg);
        // from day -21 to day 63 the plot is 634 units wide
        assertEquals(36, x[0], .1);
        assertEquals(36 + 634. / 4, x[1], .1);
        assertEquals(670, x[2], .1);
    }

    @Test
    void manyMarksLieBesideOrOverOneAnotherAndNeverOnOneAnother() {
        PlanMark[] marks = new PlanMark[20];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = mark(i / 3, PlanMark.Kind.PROGRAMME, "change " + i);
        }
        for (TrendSize size : TrendSize.values()) {
            List<Element> circles = all(parse(TrendChart.draw(marked(marks), size)), "circle");
            for (Element one : circles) {
                for (Element other : circles) {
                    double dx = Double.parseDouble(one.getAttribute("cx")) - Double.parseDouble(other.getAttribute("cx"));
                    double dy = Double.parseDouble(one.getAttribute("cy")) - Double.parseDouble(other.getAttribute("cy"));
                    assertTrue(one == other || Math.hypot(dx, dy) >= 18, size + ": " + dx + ", " + dy);
                }
            }
        }
    }

    /** The boxes of the words of a chart, written twice where they have a rim, must not meet; seeded courses of 1 to 9 scores. */
    @Test
    void scoresNeverCoverOneAnother() {
        Random random = new Random(20301204);
        for (int round = 0; round < 400; round++) {
            Double[] scores = new Double[1 + random.nextInt(9)];
            for (int i = 0; i < scores.length; i++) {
                scores[i] = random.nextInt(4) == 0 ? null : (double) random.nextInt(101);
            }
            for (TrendSize size : new TrendSize[] {TrendSize.WIDE, TrendSize.MIDDLE, TrendSize.NARROW}) {
                List<Element> values = all(parse(TrendChart.draw(trend(scores), size)), "text").stream()
                        .filter(t -> t.getAttribute("class").equals("t-p") && !t.hasAttribute("aria-hidden")).toList();
                for (int a = 0; a < values.size(); a++) {
                    for (int b = a + 1; b < values.size(); b++) {
                        assertFalse(box(values.get(a)).intersects(box(values.get(b))), size + " " + Arrays.toString(scores));
                    }
                }
            }
        }
    }

    private static Rectangle2D box(Element text) {
        return LabelPlaces.Place.of(Double.parseDouble(text.getAttribute("x")), Double.parseDouble(text.getAttribute("y")),
                text.hasAttribute("text-anchor") ? text.getAttribute("text-anchor") : "start", text.getTextContent(), 15, true).box();
    }

    @Test
    void aMarkWithoutWordsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> mark(1, PlanMark.Kind.OTHER, " "));
    }

    @Test
    void impossibleScoresDatesAndWidthsAreRefused() {
        for (double bad : new double[] {-.01, 100.01, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> trend(bad), "score " + bad);
        }
        assertThrows(IllegalArgumentException.class, () -> trend(true, 0., null, 5.));
        assertThrows(IllegalArgumentException.class, () -> trend(true, null, Double.NaN, 5.));
        assertThrows(IllegalArgumentException.class, () -> new Trend("a", "m", "", 0, 10, true, 0,
                List.of(new Trend.Visit(START, 1.), new Trend.Visit(START, 2.)), null, null));
        assertThrows(IllegalArgumentException.class, () -> new Trend("a", "m", "", 10, 10, true, 0, List.of(new Trend.Visit(START, 10.)), null, null));
        assertThrows(IllegalArgumentException.class, TrendChartTest::trend);
    }
}
