package org.steadwork.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Exposure results kept with a case: recorded, looked at again as they were, corrected by a further one, withdrawn but never gone. */
@QuarkusTest
class ExposurePagesTest {

    /** Vector M2 of the methods' file: limit 7.932 kg, index 1.261 (hand-worked). */
    private static final Map<String, String> LIFT = Map.of("reach", "40", "height", "30", "travel", "70", "asymmetry", "30", "per_minute", "4",
            "duration", "short", "grip", "fair", "load", "10", "record-task", "Cartons from the floor", "record-on", "5 Mar 2026");

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    private Visitor clinician;
    private long id;
    private String path;

    @BeforeEach
    void aCase() {
        clinician = accounts.visitor(Role.CLINICIAN);
        id = cases.open("Ermintrude", "Lifter-" + System.nanoTime());
        path = "/cases/" + id + "/exposure";
    }

    @Test
    void aResultIsLookedAtThenRecordedThenListed() {
        assertTrue(clinician.open(path).text().contains("No task was rated so far"));
        clinician.open(path + "/new/lifting");
        Document looked = clinician.submit(path + "/new/lifting", with("do", "look"));
        assertTrue(looked.select("#result").text().contains("1.3"), looked.text());
        assertTrue(looked.text().contains("Not recorded yet"));
        assertEquals(1, clinician.open(path).select("main h2:contains(Nothing recorded yet)").size(), "looking keeps nothing");
        clinician.open(path + "/new/lifting");
        Document kept = clinician.submit(path + "/new/lifting", with("do", "record"));
        assertEquals(200, clinician.status());
        assertTrue(kept.select("#result").text().contains("Lifting index 1.3"), kept.text());
        assertTrue(kept.select("#result .working").text().contains("7.932"), "the working is kept");
        assertTrue(kept.text().contains("Cartons from the floor"));
        assertTrue(kept.select("dl").text().replace('\u00a0', ' ').contains("Load 10 kg"), "what was entered is shown");
        Document list = clinician.open(path);
        assertEquals("Cartons from the floor", list.select("tbody th").text());
        assertTrue(list.select("tbody td").text().contains("5 Mar 2026"));
    }

    @Test
    void whatIsWrongIsSaidAtItsFieldAndNothingIsLostOrKept() {
        clinician.open(path + "/new/lifting");
        Map<String, String> wrong = with("do", "record");
        wrong.put("reach", "400");
        wrong.put("record-task", "");
        wrong.put("record-on", "5 Mar 2099");
        Document page = clinician.submit(path + "/new/lifting", wrong);
        assertEquals(422, clinician.status());
        assertEquals(List.of("#record-task", "#record-on", "#reach"), page.select(".notice--stop a").eachAttr("href"));
        assertEquals("400", page.getElementById("reach").val());
        assertTrue(clinician.open(path).text().contains("No task was rated so far"));
    }

    @Test
    void aCorrectionStandsInThePlaceOfTheEarlierOneWhichStaysToBeRead() {
        long first = record();
        Document form = clinician.open(path + "/new/lifting?corrects=" + first);
        assertEquals("40", form.getElementById("reach").val(), "what was entered stands in the form");
        clinician.submit(path + "/new/lifting", Map.of("load", "12", "do", "record"));
        assertEquals(422, clinician.status(), "a correction needs a reason");
        clinician.submit(path + "/new/lifting", Map.of("load", "12", "record-reason", "Weighed again", "do", "record"));
        assertEquals(200, clinician.status());
        Document list = clinician.open(path);
        assertEquals(1, list.select("tbody tr").size());
        assertTrue(list.select("tbody").text().contains("1.5"), "12 kg over 7.932 kg");
        Document earlier = clinician.open(path + "/" + first);
        assertTrue(earlier.select(".notice--caution").text().contains("Weighed again"));
        assertTrue(earlier.select("#result").text().contains("Lifting index 1.3"));
        clinician.open(path + "/new/lifting?corrects=" + first);
        clinician.submit(path + "/new/lifting", Map.of("record-reason", "Once more", "do", "record"));
        assertEquals(422, clinician.status(), "what no longer stands is not corrected again");
    }

    @Test
    void aWithdrawnOneIsMarkedAndStays() {
        long first = record();
        clinician.open(path + "/" + first);
        clinician.submit(path + "/" + first + "/withdraw", Map.of("reason", ""));
        assertEquals(422, clinician.status());
        Visitor second = accounts.visitor(Role.LEAD);
        second.open(path + "/" + first);
        clinician.submit(path + "/" + first + "/withdraw", Map.of("reason", "Another person’s task"));
        assertEquals(200, clinician.status());
        assertTrue(clinician.page().text().contains("Another person’s task"));
        assertTrue(clinician.page().select("tbody tr").isEmpty());
        second.submit(path + "/" + first + "/withdraw", Map.of("reason", "Too late"));
        assertEquals(409, second.status());
        assertTrue(clinician.open(path + "/" + first).select("#result").text().contains("Lifting index 1.3"));
    }

    @Test
    void anotherCaseDoesNotShowIt() {
        long first = record();
        long other = cases.open("Otto", "Other-" + System.nanoTime());
        clinician.open("/cases/" + other + "/exposure/" + first);
        assertEquals(404, clinician.status());
        clinician.open("/cases/" + other + "/exposure/new/lifting?corrects=" + first);
        assertEquals(404, clinician.status());
        assertFalse(clinician.open("/cases/" + other + "/exposure").text().contains("Cartons"));
    }

    @Test
    void theListCostsTheSameHoweverManyThereAre() {
        record();
        long one = statements.during(() -> clinician.open(path));
        record();
        record();
        assertEquals(one, statements.during(() -> clinician.open(path)));
    }

    private long record() {
        clinician.open(path + "/new/lifting");
        Document kept = clinician.submit(path + "/new/lifting", with("do", "record"));
        assertEquals(200, clinician.status(), kept.text());
        return Long.parseLong(kept.select("form[action$=/withdraw]").attr("action").replaceAll(".*/exposure/(\\d+)/.*", "$1"));
    }

    private static Map<String, String> with(String field, String value) {
        Map<String, String> lift = new HashMap<>(LIFT);
        lift.put(field, value);
        return lift;
    }
}
