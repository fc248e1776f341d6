package org.steadwork.casemap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steadwork.account.Role;
import org.steadwork.casefile.LinkDecision;
import org.steadwork.casefile.Links;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class MapPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    PlacedCards placed;

    @Inject
    Links links;

    @Inject
    EntityManager db;

    @Inject
    Statements statements;

    private long id;
    private Visitor visitor;

    @BeforeEach
    void aCaseWithCards() {
        id = cases.open("Nila", "Mapperton");
        placed.on(id, PlacedCards.neckAtWork(id));
        visitor = accounts.visitor(Role.CLINICIAN);
    }

    private String ties() {
        return "/cases/" + id + "/ties";
    }

    /** The row of the table of ties that names both. */
    private static Element row(Document page, String from, String to) {
        return page.select("#ties tbody tr").stream().filter(r -> r.child(0).text().contains(from) && r.child(1).text().contains(to)).findFirst()
                .orElseThrow(() -> new AssertionError("No tie of " + from + " and " + to + " among " + page.select("#ties tbody tr").eachText()));
    }

    private Document decide(String from, String to, String decision, String reason) {
        visitor.open(ties() + "?from=" + from + "&to=" + to);
        return visitor.submit(ties(), Map.of("decision", decision, "reason", reason));
    }

    @Test
    void theMapShowsThreeColumnsAndWhatTheyHangTogetherBy() {
        Document page = visitor.open("/cases/" + id);
        assertEquals(200, visitor.status());
        assertEquals(List.of("Where it hurts", "What the work place does", "What we do about it"), page.select(".map__head h3").eachText());
        List<String> cards = page.select(".card__title").eachText();
        // findings by rank: 1.4 × 7 × 3, then 1.5 × 7 × 1, then the one without hours; in range at the end
        assertEquals(List.of("1 Right upper shoulder", "2 Base of neck <b>", "A Long screen runs", "B Main screen low",
                "C Phone held by the shoulder", "Chair, desk, keyboard", "a Screen raised", "b Neck turns"), cards);
        assertEquals("140 min unbroken × 7 h × limited evidence", row(page, "2 Base of neck", "A Long screen runs").child(2).text());
        assertEquals("partly met × hours not recorded × moderate evidence", row(page, "1 Right", "C Phone").child(2).text());
        assertEquals("Straight for 2", page.select(".card__ties").last().text());
        assertTrue(page.select("main").text().contains("seen together, not caused by"));
    }

    @Test
    void candidatesAreDashedAndAgreedActionsSolid() {
        Document page = visitor.open("/cases/" + id);
        // 1-A, 2-A, 2-B and 1-C to be decided; B-a agreed
        assertEquals(4, page.select(".threads").first().select(".thread--maybe").size());
        assertEquals(0, page.select(".threads").last().select(".thread--maybe").size());
        assertEquals(1, page.select(".threads").last().select("path.thread").size());
        assertEquals("M0,150 C50,150 50,50 100,50", page.select(".threads").last().select("path.thread").attr("d"));
        assertEquals("0 0 100 400", page.select(".threads svg").first().attr("viewBox"));
        assertTrue(row(page, "B Main screen low", "a Screen raised").child(3).text().startsWith("agreed Change"));
    }

    @Test
    void aConfirmedTieIsSolidAndKeepsReasonAndName() {
        Document page = decide("symptom:neck", "finding:SC-1", "confirmed", "Looks down at it all day.");
        assertEquals(200, visitor.status());
        Element row = row(page, "2 Base of neck", "Main screen low");
        assertEquals("“Looks down at it all day.”", row.child(2).text());
        assertTrue(row.child(3).text().startsWith("confirmed, T. Clinician"), row.text());
        assertEquals(3, page.select(".threads").first().select(".thread--maybe").size());
        assertEquals(1, page.select(".threads").first().select(".thread:not(.thread--maybe)").size());
    }

    @Test
    void aRejectedTieLeavesTheMapAndStaysReadable() {
        Document page = decide("symptom:neck", "finding:SC-1", "rejected", "Better on days with more screen work.");
        assertEquals(3, page.select(".threads").first().select("path.thread").size());
        Element rejected = page.select("#ties details.working").first();
        assertTrue(rejected.select("summary").text().startsWith("1 rejected"));
        assertTrue(rejected.text().contains("Better on days with more screen work."));
    }

    @Test
    void theRowOfTheTableDecidesTooWithoutLeavingThePage() {
        Document page = visitor.open("/cases/" + id);
        Element form = row(page, "2 Base of neck", "B Main screen low").selectFirst("form");
        assertEquals(ties(), form.attr("action"));
        visitor.post(ties(), Map.of("csrf-token", List.of(form.select("[name=csrf-token]").val()), "version", List.of(form.select("[name=version]").val()),
                "from", List.of(form.select("[name=from]").val()), "to", List.of(form.select("[name=to]").val()),
                "reason", List.of("Seen at the desk."), "decision", List.of("confirmed")));
        assertEquals(200, visitor.status());
        assertEquals(1, links.of(id).size());
        assertEquals(LinkDecision.CONFIRMED, links.of(id).get(0).decision());
    }

    @ParameterizedTest
    @CsvSource({"confirmed,'','reason'", "confirmed,'   ','reason'", "'',Because,'decision'", "perhaps,Because,'decision'"})
    void aDecisionWithoutReasonOrAnswerIsRefusedAndKeepsWhatWasTyped(String decision, String reason, String field) {
        visitor.open(ties() + "?from=symptom:neck&to=finding:SC-1");
        Document page = visitor.submit(ties(), Map.of("decision", decision, "reason", reason));
        assertEquals(422, visitor.status());
        assertEquals("#" + field, page.select(".notice--stop a").attr("href"));
        assertFalse(page.select("#" + field + "-error").isEmpty());
        assertEquals("symptom:neck", page.select("#from option[selected]").val());
        assertTrue(links.of(id).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"symptom:neck,action:adjustment-1", "finding:SC-1,finding:TK-3", "symptom:gone,finding:SC-1", "'',finding:SC-1", "nonsense,finding:SC-1"})
    void cardsThatDoNotStandSideBySideAreNotTied(String from, String to) {
        visitor.open(ties());
        visitor.submit(ties(), Map.of("from", from, "to", to, "decision", "confirmed", "reason", "Because"));
        assertEquals(422, visitor.status());
        assertTrue(links.of(id).isEmpty());
    }

    @Test
    void aDecisionMadeFromAnOldPageShowsBoth() {
        Visitor other = accounts.visitor(Role.LEAD);
        String pair = ties() + "?from=symptom:neck&to=finding:SC-1";
        visitor.open(pair);
        other.open(pair);
        other.submit(ties(), Map.of("decision", "confirmed", "reason", "First."));
        Document page = visitor.submit(ties(), Map.of("decision", "rejected", "reason", "Second."));
        assertEquals(409, visitor.status());
        assertTrue(page.select("#reason-stored").text().contains("First."), page.text());
        assertEquals("Second.", page.select("#reason").val());
        // saving again from the page that showed the conflict goes through
        Document map = visitor.submit(ties(), Map.of("decision", "rejected", "reason", "Second."));
        assertEquals(200, visitor.status());
        assertTrue(map.select("#ties details.working").text().contains("Second."));
    }

    @Test
    void aDecisionCanBeChanged() {
        decide("symptom:neck", "finding:SC-1", "confirmed", "First.");
        visitor.open(ties() + "?from=symptom:neck&to=finding:SC-1");
        assertEquals("First.", visitor.page().select("#reason").val());
        visitor.submit(ties(), Map.of("decision", "rejected", "reason", "Second."));
        assertEquals(200, visitor.status());
        assertEquals(1, links.of(id).size());
        assertEquals(LinkDecision.REJECTED, links.of(id).get(0).decision());
    }

    @Test
    void everyDecisionStaysInTheHistory() {
        decide("symptom:neck", "finding:SC-1", "confirmed", "First.");
        decide("symptom:neck", "finding:SC-1", "rejected", "Second.");
        List<?> reasons = db.createNativeQuery("select reason from case_link_history where case_file_id = ?1 order by revision").setParameter(1, id)
                .getResultList();
        assertEquals(List.of("First.", "Second."), reasons);
    }

    @Test
    void whatWasAgreedCanBeRejected() {
        Document page = decide("finding:SC-1", "action:adjustment-1", "rejected", "It answers something else.");
        assertTrue(page.select(".threads").last().select("path.thread").isEmpty());
        assertTrue(page.select("#ties details.working").text().contains("It answers something else."));
    }

    @Test
    void moreTiesCostNoMoreQueries() {
        decide("symptom:neck", "finding:SC-1", "confirmed", "At first."); // from now on every rule is asked, as something was done in the case
        visitor.open("/cases/" + id);
        long few = statements.during(() -> visitor.open("/cases/" + id));
        for (String finding : List.of("SC-1", "TK-3", "PH-1")) {
            decide("symptom:neck", "finding:" + finding, "confirmed", "Because.");
            decide("symptom:shoulder_right", "finding:" + finding, "rejected", "Because.");
        }
        assertEquals(few, statements.during(() -> visitor.open("/cases/" + id)));
    }

    /** Head, cards, measures and next step of a case ask the same things of the database; one answer serves them all. */
    @Test
    void theMapAsksNothingTwice() {
        int different = statements.textsDuring(() -> visitor.open("/cases/" + id)).size();
        assertEquals(different, statements.during(() -> visitor.open("/cases/" + id)));
    }

    @Test
    void aTieOutlivesItsCard() {
        decide("symptom:neck", "finding:SC-1", "confirmed", "First.");
        placed.on(id, PlacedCards.neckAtWork(id).stream().filter(card -> !card.key().ref().equals("SC-1")).toList());
        Document page = visitor.open("/cases/" + id);
        assertTrue(row(page, "2 Base of neck", "Main screen low").child(1).text().contains("no longer on the map"));
    }

    @Test
    void anEmptyMapSaysWhatToDoNext() {
        long bare = cases.open("Odo", "Blank");
        Document page = visitor.open("/cases/" + bare);
        assertEquals(200, visitor.status());
        assertEquals(3, page.select(".map__empty a").size());
        assertTrue(page.select(".threads path").isEmpty());
    }

    @Test
    void theMeasuresStandWithTheirVerdictAndTrend() {
        Document page = visitor.open("/cases/" + id);
        assertEquals("−22", page.select(".verdict__by").text());
        assertEquals(3, page.select("figure.fig svg[aria-labelledby~=ndi]").size());
        assertEquals(2, page.select(".multiple svg").size());
        assertTrue(page.select("[style], script:not([src]), style").isEmpty());
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), ids.stream().distinct().count(), "an id stands twice in " + ids);
    }

    @ParameterizedTest
    @CsvSource({"CLINICIAN,200", "LEAD,200", "ASSISTANT,403"})
    void onlyCliniciansSeeTheMap(Role role, int status) {
        Visitor someone = accounts.visitor(role);
        someone.open("/cases/" + id);
        assertEquals(status, someone.status());
        someone.open(ties());
        assertEquals(status, someone.status());
    }

    @Test
    void whoIsNotSignedInIsSentToSignIn() {
        Visitor nobody = new Visitor();
        assertTrue(nobody.open("/cases/" + id).select(".map").isEmpty());
        assertFalse(nobody.page().text().contains("Base of neck"));
    }

    @Test
    void withoutATokenNothingIsStored() {
        visitor.post(ties(), Map.of("from", List.of("symptom:neck"), "to", List.of("finding:SC-1"), "decision", List.of("confirmed"),
                "reason", List.of("Because"), "version", List.of("")));
        assertEquals(400, visitor.status());
        assertTrue(links.of(id).isEmpty());
    }

    @Test
    void aCaseThatDoesNotExistIsNotFound() {
        visitor.open("/cases/99999999");
        assertEquals(404, visitor.status());
    }
}
