package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The figures of groups: drawn in three widths, told in words, without a style attribute. */
class PlotTest {

    private static final List<SharePlot.Row> ROWS = List.of(new SharePlot.Row("Neck", "14 of 23", 61, 41, 78), new SharePlot.Row("Low back & <leg>", "13 of 20", 65, 43, 82));

    @Test
    void sharesStandAtTheirPlaceOnTheScale() {
        Document wide = Jsoup.parse(SharePlot.figure("a", "Shares", ROWS), "", Parser.xmlParser());
        assertEquals(List.of("wide", "mid", "narrow"), wide.select("svg").eachAttr("class"));
        assertEquals("Neck: 14 of 23, 61 %, interval 41 to 78 %. Low back & <leg>: 13 of 20, 65 %, interval 43 to 82 %.", wide.select("desc").first().text());
        assertFalse(wide.html().contains("style="));
        // the plot of the wide figure begins at 250 and is 510 wide
        List<Element> bars = wide.select("svg.wide line[stroke-width=2]").stream().filter(line -> !line.attr("x1").equals(line.attr("x2"))).toList();
        assertEquals(2, bars.size(), wide.select("svg.wide").outerHtml());
        double[] ends = {Double.parseDouble(bars.get(0).attr("x1")), Double.parseDouble(bars.get(0).attr("x2"))};
        assertEquals(250 + 5.1 * 41, Math.min(ends[0], ends[1]), 0.6);
        assertEquals(250 + 5.1 * 78, Math.max(ends[0], ends[1]), 0.6);
        assertTrue(SharePlot.figure("a", "None", List.of()).isEmpty());
    }

    @Test
    void aCurveTellsItsSharesAndWhoIsStillFollowed() {
        CurvePlot.Curve curve = new CurvePlot.Curve("back", List.of(new CurvePlot.Point(7, 20, 10, 35), new CurvePlot.Point(21, 50, 30, 70)), 40, day -> 100 - day);
        Document drawn = Jsoup.parse(CurvePlot.figure("k", "Curve", List.of(curve)), "", Parser.xmlParser());
        assertEquals("back: day 0 0 %; day 7 20 %; day 14 20 %; day 21 50 %; day 28 50 %; day 35 50 %;", drawn.select("desc").first().text());
        assertTrue(drawn.select("svg.wide text").eachText().containsAll(List.of("100", "93", "86", "65", "28")), drawn.select("svg.wide text").eachText().toString());
        assertEquals(List.of(0, 7, 14, 21, 28, 35), CurvePlot.ticks(40));
        assertEquals(List.of(0, 1), CurvePlot.ticks(0.5));
    }

    @Test
    void twoCurvesAreToldApartWithoutColour() {
        CurvePlot.Curve one = new CurvePlot.Curve("Neck", List.of(new CurvePlot.Point(7, 20, 10, 35)), 30, day -> 40 - day);
        CurvePlot.Curve other = new CurvePlot.Curve("Low back", List.of(new CurvePlot.Point(9, 40, 10, 35)), 20, day -> 30 - day);
        Document drawn = Jsoup.parse(CurvePlot.figure("k", "Curves", List.of(one, other)), "", Parser.xmlParser());
        assertTrue(drawn.select("svg.wide text").eachText().containsAll(List.of("Neck", "Low back")));
        assertFalse(drawn.select("svg.wide [stroke-dasharray]").isEmpty());
    }

    @Test
    void whatAPersonTypedIsTextAndNeverMarkup() {
        String name = "<script>alert(1)</script> & \"co\"";
        String shares = SharePlot.figure("a", name, List.of(new SharePlot.Row(name, name, 61, 41, 78)));
        String curves = CurvePlot.figure("k", name, List.of(new CurvePlot.Curve(name, List.of(new CurvePlot.Point(7, 20, 10, 35)), 30, day -> 40 - day),
                new CurvePlot.Curve("b", List.of(), 20, day -> 30 - day)));
        for (String figure : List.of(shares, curves)) {
            assertFalse(figure.contains("<script"), figure);
            Document asPage = Jsoup.parse(figure);
            assertTrue(asPage.select("script").isEmpty());
            assertEquals(name, asPage.select("svg.wide > title").first().wholeText());
            // the parser of XML takes no bare ampersand: the figure also stands in the letter
            Document asXml = Jsoup.parse(figure, "", Parser.xmlParser());
            assertTrue(asXml.select("svg.wide desc").first().text().startsWith(name), asXml.select("svg.wide desc").text());
            assertTrue(asXml.select("svg.wide text").eachText().stream().anyMatch(text -> text.contains("<script>")));
        }
    }

    @Test
    void aLongLabelTakesTwoLinesAndIsNotCut() {
        String label = "Region’s measure: better by more than error";
        Document drawn = Jsoup.parse(SharePlot.figure("a", "Shares", List.of(new SharePlot.Row(label, "107 of 112", 61, 41, 78),
                new SharePlot.Row("Neck", "14 of 23", 61, 41, 78))), "", Parser.xmlParser());
        for (String size : List.of("wide", "mid", "narrow")) {
            List<String> texts = drawn.select("svg." + size + " text.t-b").eachText();
            assertEquals(label + " Neck", String.join(" ", texts), size);
            assertTrue(texts.stream().noneMatch(text -> text.contains("…")), texts.toString());
        }
        String longest = label + ", counted for all who started and never for those who were lost on the way to the second score";
        Document cut = Jsoup.parse(SharePlot.figure("a", "Shares", List.of(new SharePlot.Row(longest, "1 of 2", 61, 41, 78))), "", Parser.xmlParser());
        assertEquals(2, cut.select("svg.mid text.t-b").size());
        assertTrue(cut.select("svg.mid text.t-b").last().text().endsWith("…"));
        assertTrue(cut.select("svg.mid desc").text().startsWith(longest), "the words keep all of it");
    }
}
