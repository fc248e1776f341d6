package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class GoalPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Test
    void goalsAreSetAndReviewed() {
        long id = cases.open("Zadie", "Ebdon-Frith");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Document page = set(visitor, id, "A full shift at the belt", "", "");
        assertTrue(page.text().contains("“A full shift at the belt”"), page.text());
        String state = page.select("select[name^=state_]").attr("name");
        page = visitor.submit(path(id), Map.of(state, "in_part", state.replace("state", "where"), "8 h, lifts to 12 kg"));
        assertEquals("in_part", page.select("select[name^=state_] option[selected]").val());
        assertEquals("in part", visitor.open("/cases/" + id + "/outcomes").select("section[aria-labelledby=goals] .status").text());
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        String token = assistant.open("/patients/new").select("input[name=csrf-token]").first().val();
        for (String path : List.of("/goals", "/own-activities", "/outcomes", "/outcomes/ndi", "/grip-and-motion")) {
            assistant.post("/cases/" + id + path, Map.of("csrf-token", List.of(token), "newGoal", List.of("x")));
            assertEquals(403, assistant.status(), path);
            assistant.open("/cases/" + id + (path.equals("/own-activities") ? "/goals" : path));
            assertEquals(403, assistant.status(), path);
        }
    }

    // By R from the formula of Kiresuk and Sherman 1968, as in the vectors of the scoring tests: weights 3, 2, 1 and ratings 1, 0, -1 give 54.406
    @Test
    void theTScoreStandsWithItsWorkingAndAGoalGivenUpLeavesIt() {
        long id = cases.open("Yves", "Corrin-Blake");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        set(visitor, id, "Lift 10 kg", "3", "1");
        set(visitor, id, "Sit an hour", "1", "2");
        Document page = set(visitor, id, "Sleep through", "", "");
        List<String> fields = page.select("select[name^=x_]").eachAttr("name");
        page = visitor.submit(path(id), Map.of(fields.get(0), "1", fields.get(1), "0", fields.get(2), "-1"));
        assertEquals(200, visitor.status(), page.text());
        String shown = page.select("#t").first().closest("section").text();
        assertTrue(shown.contains("T-score 54.4"), shown);
        assertTrue(shown.contains("50 + 10 × 2 ÷ √(0.7 × 14 + 0.3 × 6²)"), shown);

        String give = fields.get(2).replace("x_", "give_");
        page = visitor.submit(path(id), Map.of(give, "yes"));
        assertEquals(422, visitor.status(), "giving up says why");
        page = visitor.submit(path(id), Map.of(give, "yes", fields.get(2).replace("x_", "why_"), "Moved to another job."));
        assertEquals(200, visitor.status(), page.text());
        assertTrue(page.select("#gone").first().closest("section").text().contains("Moved to another job."), page.text());
        assertTrue(page.select("#t").first().closest("section").text().contains("“Sleep through” (withdrawn: Moved to another job.)"), page.text());
    }

    @Test
    void aGoalChangedMeanwhileIsShownAndWrongInputIsToldAtItsField() {
        long id = cases.open("Xara", "Dunmore-Sykes");
        Visitor one = accounts.visitor(Role.CLINICIAN);
        String state = set(one, id, "Drive to work", "", "").select("select[name^=state_]").attr("name");
        Visitor two = accounts.visitor(Role.LEAD);
        two.open(path(id));
        one.submit(path(id), Map.of(state, "met"));
        assertEquals(200, one.status());
        two.submit(path(id), Map.of(state, "in_part"));
        assertEquals(409, two.status());
        assertTrue(two.page().text().contains("Stored meanwhile: met"), two.page().text());
        two.submit(path(id), Map.of());
        assertEquals(200, two.status(), two.page().text());

        two.submit(path(id), Map.of(state.replace("state", "x"), "3", "newGoal", "x".repeat(201), "newImportance", "9"));
        assertEquals(422, two.status());
        for (String field : List.of(state.replace("state", "x"), "newGoal", "newImportance")) {
            assertFalse(two.page().select("#" + field + "-error").text().isBlank(), field);
        }
    }

    private static Document set(Visitor visitor, long id, String words, String importance, String difficulty) {
        visitor.open(path(id));
        Map<String, String> goal = new HashMap<>(Map.of("newGoal", words, "newImportance", importance, "newDifficulty", difficulty));
        return visitor.submit(path(id), goal);
    }

    private static String path(long id) {
        return "/cases/" + id + "/goals";
    }
}
