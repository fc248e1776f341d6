package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.body.Side;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;

class BodyChartContentTest {

    private final BodyChartContent content = new BodyChartContent();
    private final BodyChart chart = content.chart();

    @Test
    void fiftyZonesCoverEveryRegion() {
        assertEquals(50, chart.zones().size());
        for (BodyRegion region : BodyRegion.values()) {
            assertTrue(!chart.zones(region).isEmpty(), region::label);
        }
    }

    @Test
    void arrowsReachEveryZoneFromEveryZone() {
        for (Zone zone : chart.zones()) {
            assertEquals(50, chart.reachableFrom(zone.key()).size(), zone.key());
        }
    }

    @Test
    void arrowsLeadTheWayTheyPoint() {
        for (Zone zone : chart.zones()) {
            zone.neighbours().forEach((direction, key) -> {
                double dx = chart.zone(key).anchor().x() - zone.anchor().x();
                double dy = chart.zone(key).anchor().y() - zone.anchor().y();
                double along = switch (direction) {
                    case UP -> -dy;
                    case DOWN -> dy;
                    case LEFT -> -dx;
                    case RIGHT -> dx;
                };
                assertTrue(along > 0, zone.key() + " " + direction.key() + " leads back to " + key);
            });
        }
    }

    @Test
    void rightAndLeftAreThePatientsOwn() {
        for (Zone zone : chart.zones()) {
            int middle = content.figure().outlines().get(zone.view()).middle();
            double toTheReadersRight = zone.anchor().x() - middle;
            double expected = zone.side() == Side.CENTRE ? 0
                    : (zone.side() == Side.LEFT) == (zone.view() == View.FRONT) ? 1 : -1;
            assertEquals(expected, Math.signum(toTheReadersRight), zone.key());
            String word = zone.side() == Side.CENTRE ? "" : zone.side() == Side.LEFT ? "Left " : "Right ";
            assertTrue(zone.label().startsWith(word), zone.label());
        }
    }

    @Test
    void everySidedZoneHasItsMirrorImage() {
        for (Zone zone : chart.zones()) {
            if (zone.side() == Side.RIGHT) {
                Zone other = chart.zone(zone.key().replaceAll("_r$", "_l"));
                int middle = content.figure().outlines().get(zone.view()).middle();
                assertEquals(zone.region(), other.region());
                assertEquals(middle - zone.anchor().x(), other.anchor().x() - middle, 0.11, zone.key());
                assertEquals(zone.anchor().y(), other.anchor().y(), zone.key());
            }
        }
    }

    @Test
    void labelsAreOneEach() {
        assertEquals(50, chart.zones().stream().map(Zone::label).distinct().count());
    }

    /** WCAG 2.2, 1.4.3: text at least 4.5 to 1; relative luminance as defined there. */
    @Test
    void aNumberOnAnyStepOfPainCanBeRead() {
        for (BodyFigure.PainStep step : content.figure().ramp()) {
            double ratio = contrast(step.fill(), step.dark() ? BodyPalette.PAPER : BodyPalette.INK);
            assertTrue(ratio >= 4.5, step.fill() + " " + ratio);
            assertTrue(contrast(step.fill(), step.dark() ? BodyPalette.PAPER : BodyPalette.DEEP) >= 3, step.fill());
        }
    }

    @Test
    void painRunsFromLightToDark() {
        double[] light = content.figure().ramp().stream().mapToDouble(step -> luminance(step.fill())).toArray();
        for (int i = 1; i < light.length; i++) {
            assertTrue(light[i] < light[i - 1], "step " + i);
        }
    }

    @Test
    void aWrongEntryNamesTheLine() throws IOException {
        String text;
        try (InputStream in = getClass().getResourceAsStream("/content/" + BodyChartContent.FILE)) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (String[] change : new String[][] {{"region: knee", "region: nee"}, {"{down: neck_front, ", "{down: nick, "},
            {"tone: ink", "tine: ink"}, {"side: left", "side: port"}, {"evidence: PROP", "evidence:"}}) {
            String broken = text.replaceFirst(Pattern.quote(change[0]), change[1]);
            ContentException problem = assertThrows(ContentException.class,
                    () -> new BodyChartContent(Content.yaml("x.yaml", new StringReader(broken))), Arrays.toString(change));
            assertTrue(problem.getMessage().startsWith("x.yaml, line "), problem.getMessage());
        }
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        double[] weight = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double channel = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weight[i] * (channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
