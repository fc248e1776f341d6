package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class FindingLifeTest {

    private static final Map<String, String> FIRST = Map.ofEntries(
            Map.entry("assessedOn", "4 Mar 2026"), Map.entry("popliteal_height", "370"), Map.entry("shoe", "20"),
            Map.entry("elbow_rest_height", "240"), Map.entry("seat_now", "450"), Map.entry("seat_low", "400"), Map.entry("seat_high", "530"),
            Map.entry("desk_now", "740"), Map.entry("desk_low", "740"), Map.entry("desk_high", "740"), Map.entry("do", "save"));

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    @Test
    void aMistakenStepIsUndoneWithAReasonAndStaysReadable() {
        long id = cases.open("Jessamy", "Underhill");
        Visitor visitor = assess(id, FIRST);
        String finding = finding(visitor, "Keys against elbow height");
        step(visitor, finding, Map.of("stage", "agreed", "on", "5 Mar 2026", "agreedWith", "office manager"));
        step(visitor, finding, Map.of("stage", "done", "on", "6 Mar 2026"));
        visitor.open(finding);
        Visitor late = accounts.visitor(Role.LEAD);
        late.open(finding);
        visitor.submit(finding + "/undo", Map.of("undoReason", ""));
        assertEquals(422, visitor.status());
        visitor.submit(finding + "/undo", Map.of("undoReason", "It was another desk"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().text().contains("Now: Agreed with office manager"), visitor.page().text());
        assertEquals("Done", visitor.page().select("s").text());
        assertTrue(visitor.page().text().contains("It was another desk"));
        late.submit(finding + "/undo", Map.of("undoReason", "Me too"));
        assertEquals(409, late.status());
        assertEquals("Me too", late.page().select("#undoReason").text());
        visitor.submit(finding + "/undo", Map.of("undoReason", "Not agreed either"));
        assertTrue(visitor.page().text().contains("Now: Found"));
        assertTrue(visitor.page().select("form[action$=/undo]").isEmpty(), "nothing is left to undo");
    }

    @Test
    void theEffectIsToldOnceALaterLookMeasuredIt() {
        long id = cases.open("Kerenza", "Underhill");
        Visitor visitor = assess(id, FIRST);
        String finding = finding(visitor, "Keys against elbow height");
        step(visitor, finding, Map.of("stage", "done", "on", "6 Mar 2026"));
        visitor.open(finding);
        assertTrue(visitor.page().text().contains("not measured again yet"));
        Map<String, String> second = new HashMap<>(FIRST);
        second.putAll(Map.of("assessedOn", "11 Mar 2026", "seat_now", "520", "footrest_now", "130"));
        visitor.open("/cases/" + id + "/work-place/edit?again=true");
        visitor.submit("/cases/" + id + "/work-place/edit", second);
        assertEquals(200, visitor.status());
        visitor.open(finding);
        // by hand: keys 770; elbow 450 + 240 = 690, then 520 + 240 = 760: +80 before, +10 after, 70 nearer
        String shown = visitor.page().text().replace('\u00a0', ' ');
        assertTrue(shown.contains("From +80 mm (out of range) on 4 Mar 2026 to +10 mm (in range) on 11 Mar 2026: 70 mm nearer to the aim. Measured after it was done."), shown);
        assertTrue(shown.contains("Now: Checked"), shown);
        assertTrue(visitor.page().select("table").last().text().contains("A later look"));
        visitor.open("/cases/" + id + "/work-place/compare");
        String compared = visitor.page().select("tr:contains(Keys against elbow height)").text().replace('\u00a0', ' ');
        assertTrue(compared.contains("+80 mm out of range +10 mm in range −70 mm better"), compared);
        assertTrue(visitor.page().select("section:has(#s3)").text().replace('\u00a0', ' ').contains("Seat height 450 mm, measured 520 mm, measured +70 mm"),
                visitor.page().select("section:has(#s3)").text());
        assertEquals(2, visitor.page().select("figure svg").size());
        assertEquals(visitor.page().select("[id]").size(), visitor.page().select("[id]").eachAttr("id").stream().distinct().count(), "an id stands twice");
    }

    @Test
    void oneLookCannotBeComparedAndAForeignOneIsNotFound() {
        long id = cases.open("Lowenna", "Underhill");
        Visitor visitor = assess(id, FIRST);
        visitor.open("/cases/" + id + "/work-place/compare");
        assertTrue(visitor.page().text().contains("nothing to compare yet"));
        assertFalse(visitor.page().select("a[href$=again=true]").isEmpty());
        Map<String, String> second = new HashMap<>(FIRST);
        second.put("assessedOn", "11 Mar 2026");
        visitor.open("/cases/" + id + "/work-place/edit?again=true");
        visitor.submit("/cases/" + id + "/work-place/edit", second);
        visitor.open("/cases/" + id + "/work-place/compare?from=987654321");
        assertEquals(404, visitor.status());
        long two = statements.during(() -> visitor.open("/cases/" + id + "/work-place/compare"));
        second.put("assessedOn", "18 Mar 2026");
        visitor.open("/cases/" + id + "/work-place/edit?again=true");
        visitor.submit("/cases/" + id + "/work-place/edit", second);
        assertEquals(two, statements.during(() -> visitor.open("/cases/" + id + "/work-place/compare")));
    }

    private Visitor assess(long id, Map<String, String> values) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/work-place/edit");
        visitor.submit("/cases/" + id + "/work-place/edit", values);
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor;
    }

    private static String finding(Visitor visitor, String label) {
        return visitor.page().select("li.finding:contains(" + label + ") a[href*=/findings/]").attr("href");
    }

    private static void step(Visitor visitor, String finding, Map<String, String> values) {
        visitor.open(finding);
        visitor.submit(finding, values);
        assertEquals(200, visitor.status(), visitor.page().text());
    }
}
