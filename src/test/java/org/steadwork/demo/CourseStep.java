package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;

/** Outcomes after a visit: what changed since the start, by how much and in which words, and what has no score because it was not due. */
final class CourseStep implements WalkStep {

    /** Half of the last digit in which the files give a change. */
    private static final double HALF_A_TENTH = 0.05 + 1e-9;
    private static final Map<String, String> IDS = Map.of("nprs", "nprs-worst");

    @Override
    public void walk(WalkedVisit visit) {
        visit.expected().ifPresent(expected -> {
            check(visit.guest(), visit.path("/outcomes"), visit.where(), expected);
            boolean missed = visit.entry().text("attendance").equals("missed");
            expected.texts("not_due").forEach(instrument -> withoutScore(visit, instrument, missed));
        });
    }

    /** The same at the end of the case. */
    static void check(Guest guest, String path, String where, Entry expected) {
        if (!expected.has("changes")) {
            return;
        }
        guest.open(path).expect(200);
        Entry changes = expected.entry("changes").orElseThrow();
        for (String instrument : changes.keys()) {
            assertEquals(changes.number(instrument), change(guest, instrument), HALF_A_TENTH, where + instrument + " changed otherwise");
        }
        expected.texts("important").forEach(key -> assertTrue(words(guest, key).startsWith("Important change, better"), where + key + ": " + words(guest, key)));
        expected.texts("not_important").forEach(key -> assertFalse(words(guest, key).contains("Important"), where + key + ": " + words(guest, key)));
        expected.texts("worse").forEach(key -> assertTrue(words(guest, key).startsWith("Worse"), where + key + ": " + words(guest, key)));
    }

    private static double change(Guest guest, String instrument) {
        Element verdict = part(guest, instrument).selectFirst(".verdict__by");
        if (verdict != null) {
            return number(verdict.text());
        }
        String[] both = part(guest, instrument).selectFirst(".multiple__now").text().split(" was ");
        assertEquals(2, both.length, instrument + " has no two scores: " + part(guest, instrument).text());
        return number(both[0]) - number(both[1]);
    }

    private static String words(Guest guest, String instrument) {
        Element part = part(guest, instrument);
        Element verdict = part.selectFirst(".verdict__words");
        return verdict != null ? verdict.text() : part.select("> p > b").last().text();
    }

    private static Element part(Guest guest, String instrument) {
        Element heading = guest.page().getElementById("m-" + IDS.getOrDefault(instrument, instrument.replace('_', '-')));
        if (heading == null) {
            throw guest.missing("no measure '" + instrument + "'");
        }
        return heading.normalName().equals("h3") ? heading.closest(".multiple") : heading.closest("section");
    }

    private static double number(String text) {
        return Double.parseDouble(text.strip().split("[\\s\u00a0]")[0].replace('\u2212', '-').replace("+", ""));
    }

    /** What was not due has no score that day, least of all nought: the word for its absence stands there. */
    private static void withoutScore(WalkedVisit visit, String instrument, boolean missed) {
        Guest guest = visit.guest().open(visit.path("/outcomes?on=" + visit.day())).expect(200);
        List<Element> rows = guest.page().select("section[aria-labelledby=scores] tbody tr").stream().filter(row -> isOf(visit, row, instrument)).toList();
        assertFalse(rows.isEmpty(), visit.where() + "no row of " + instrument);
        for (Element row : rows) {
            Element cell = row.selectFirst(".grid__now");
            Element field = cell.selectFirst("input");
            if (field != null) {
                assertEquals("", field.val(), visit.where() + row.text());
            } else {
                assertTrue(cell.text().startsWith(missed ? "missed" : "not due"), visit.where() + row.text());
            }
        }
    }

    private static boolean isOf(WalkedVisit visit, Element row, String instrument) {
        String label = row.selectFirst("th").ownText();
        return switch (instrument) {
            case "psfs" -> visit.demo().entry("case").orElseThrow().entries("goals").stream().anyMatch(goal -> goal.text("activity").equals(label));
            case "nprs" -> label.startsWith("Pain, ");
            default -> label.equals(Content.yaml("instruments/" + instrument + ".yaml").text("label"));
        };
    }
}
