package org.steadwork.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BodyChartTest {

    private static Zone zone(String key, int order, Map<Direction, String> next) {
        return new Zone(key, key, Side.CENTRE, View.BACK, BodyRegion.NECK, order, new Zone.Anchor(1, 2), 18, next,
                "M0 0C1 1 2 2 3 3Z");
    }

    @Test
    void zonesComeInReadingOrderHoweverTheyWereGiven() {
        BodyChart chart = new BodyChart(List.of(zone("b", 2, Map.of()), zone("a", 1, Map.of(Direction.DOWN, "b"))));
        assertEquals(List.of("a", "b"), chart.zones().stream().map(Zone::key).toList());
    }

    @Test
    void aChartWhoseArrowsMissAZoneIsRefused() {
        List<Zone> zones = List.of(zone("a", 1, Map.of()), zone("b", 2, Map.of(Direction.UP, "a")));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new BodyChart(zones)).getMessage().contains("[b]"));
    }

    @Test
    void anArrowToNowhereADoubleKeyAndAGapInTheOrderAreRefused() {
        for (List<Zone> zones : List.of(List.of(zone("a", 1, Map.of(Direction.UP, "x"))),
                List.of(zone("a", 1, Map.of()), zone("a", 2, Map.of())),
                List.of(zone("a", 1, Map.of(Direction.UP, "b")), zone("b", 3, Map.of())), List.<Zone>of())) {
            assertThrows(IllegalArgumentException.class, () -> new BodyChart(zones), zones::toString);
        }
    }

    @Test
    void anUnknownZoneIsNeverPassedOverInSilence() {
        BodyChart chart = new BodyChart(List.of(zone("a", 1, Map.of())));
        assertEquals(Set.of(BodyRegion.NECK), chart.regionsOf(List.of("a")));
        assertThrows(IllegalArgumentException.class, () -> chart.regionsOf(List.of("a", "tail")));
    }

    @Test
    void keysOfRegionsAndKindsReadBack() {
        for (BodyRegion region : BodyRegion.values()) {
            assertEquals(region, BodyRegion.of(region.key()));
        }
        for (SymptomKind kind : SymptomKind.values()) {
            assertEquals(kind, SymptomKind.of(kind.key()));
        }
        assertThrows(IllegalArgumentException.class, () -> BodyRegion.of("NECK"));
        assertThrows(IllegalArgumentException.class, () -> SymptomKind.of("dull"));
    }
}
