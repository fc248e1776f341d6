package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class PlanPagesTest {

    private static final Map<String, String> FOUND = Map.ofEntries(Map.entry("second", "side"), Map.entry("window", "left"), Map.entry("keys_aside", "-45"),
            Map.entry("keys_edge", "140"), Map.entry("pointer_aside", "520"), Map.entry("pointer_edge", "150"), Map.entry("main_width", "530"),
            Map.entry("main_aside", "0"), Map.entry("main_distance", "700"), Map.entry("second_width", "530"), Map.entry("second_aside", "545"),
            Map.entry("second_distance", "700"), Map.entry("window_off", "35"));

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    private Visitor assessed(long id) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String page = "/cases/" + id + "/work-place/edit";
        visitor.open(page);
        visitor.submit(page, Map.of("assessedOn", "4 Mar 2026", "stature", "1700", "KB-3", "150"));
        assertEquals(200, visitor.status());
        return visitor;
    }

    private static String page(long id) {
        return "/cases/" + id + "/work-place/plan";
    }

    @Test
    void whatWasReadOffIsDrawnNowAndProposed() {
        long id = cases.open("Ottoline", "Ferncastle");
        Visitor visitor = assessed(id);
        visitor.open(page(id));
        assertEquals("150", visitor.page().select("#keys_edge").val(), "what the assessment knows is not asked again");
        assertTrue(visitor.page().select("svg[aria-labelledby*=plan]").isEmpty());
        visitor.submit(page(id), FOUND);
        assertEquals(200, visitor.status());
        String words = visitor.page().select("svg[aria-labelledby*=plan] desc").first().text();
        // by hand: atan(545 / 700) = 37.9 degrees
        assertTrue(words.contains("Side screen 38 degrees right, at 887, 38 degrees off square (out of range)"), words);
        assertTrue(words.contains("Proposed: Main screen straight ahead"), words);
        assertTrue(words.contains("Keys on the midline (in range); Pointer 50 outside the shoulder line (in range)"), words);
        visitor.open(page(id));
        assertEquals("-45", visitor.page().select("#keys_aside").val());
        visitor.submit(page(id), Map.of("second", "none", "second_width", "", "pointer_aside", "", "pointer_edge", ""));
        words = visitor.page().select("svg[aria-labelledby*=plan] desc").first().text();
        assertTrue(words.contains("Now: Screen straight ahead") && words.contains("Pointer not looked at from above (not measured)"), words);
    }

    @Test
    void aWrongNumberKeepsWhatWasTypedAndSaysWhichField() {
        long id = cases.open("Ottoline", "Ferncastle");
        Visitor visitor = assessed(id);
        visitor.open(page(id));
        Map<String, String> wrong = new HashMap<>(FOUND);
        wrong.putAll(Map.of("keys_aside", "", "pointer_edge", "", "main_distance", "7000", "window_off", "91"));
        visitor.submit(page(id), wrong);
        assertEquals(422, visitor.status());
        for (String field : new String[] {"keys_aside", "pointer_edge", "main_distance", "window_off"}) {
            assertEquals(1, visitor.page().select("#" + field + "-error").size(), field);
        }
        assertEquals("7000", visitor.page().select("#main_distance").val());
    }

    @Test
    void anOldVersionIsAnsweredWithBoth() {
        long id = cases.open("Ottoline", "Ferncastle");
        Visitor one = assessed(id);
        one.open(page(id));
        Visitor other = accounts.visitor(Role.CLINICIAN);
        other.open(page(id));
        other.submit(page(id), FOUND);
        assertEquals(200, other.status());
        Map<String, String> mine = new HashMap<>(FOUND);
        mine.put("keys_aside", "60");
        one.submit(page(id), mine);
        assertEquals(409, one.status());
        assertEquals("60", one.page().select("#keys_aside").val());
        assertTrue(one.page().select("#keys_aside-stored").text().contains("-45"));
    }
}
