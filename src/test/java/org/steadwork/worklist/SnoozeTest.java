package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Putting entries off: bounded, with a reason, kept, and over at once when the case became worse. */
@QuarkusTest
class SnoozeTest {

    private static final LocalDate TODAY = LocalDate.now();

    @Inject
    RuleCases cases;

    @Inject
    Worklists worklists;

    @Inject
    TestAccounts accounts;

    private Worklist list(long caseId, LocalDate day) {
        // in a session of its own, as each request has one
        return QuarkusTransaction.requiringNew().call(() -> worklists.on(day, new Filter(new Whose(null, Whose.ALL), "", caseId, 1)));
    }

    private WorklistEntry entry(long caseId, String rule) {
        return list(caseId, TODAY).rows().stream().filter(entry -> entry.rule().equals(rule)).findFirst().orElseThrow(() -> new AssertionError("no " + rule));
    }

    private List<String> shown(long caseId, LocalDate day) {
        return list(caseId, day).rows().stream().map(WorklistEntry::rule).sorted().toList();
    }

    private Visitor putOff(WorklistEntry entry, LocalDate until, String reason) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(path(entry));
        visitor.submit(path(entry), Map.of("backOn", until.toString(), "reason", reason));
        return visitor;
    }

    private static String path(WorklistEntry entry) {
        return "/today/entries/" + entry.id() + "/snooze";
    }

    private long caseWithoutReview(String family) {
        long id = cases.open(family);
        cases.screen(id, TODAY, "CLEAR", "", true);
        cases.signed(id, 1, TODAY);
        assertEquals(List.of("review_none"), shown(id, TODAY));
        return id;
    }

    @Test
    void anEntryPutOffIsFoldedWithReasonAndDayAndComesBackByItself() {
        long id = caseWithoutReview("Snooze-Back");
        WorklistEntry entry = entry(id, "review_none");
        assertEquals(200, putOff(entry, TODAY.plusDays(3), "She rings on Friday").status());
        assertEquals(List.of(), shown(id, TODAY));
        Snooze snooze = list(id, TODAY).snoozed().rows().get(0);
        assertEquals("She rings on Friday", snooze.reason());
        assertEquals(TODAY.plusDays(3), snooze.backOn());
        String folded = accounts.visitor(Role.CLINICIAN).open("/?case=" + id).select("section[aria-labelledby=aside]").text();
        assertTrue(folded.contains("She rings on Friday") && folded.contains("Put off: 1") && folded.contains("T. Clinician"), folded);
        assertEquals(List.of(), shown(id, TODAY.plusDays(2)));
        assertTrue(shown(id, TODAY.plusDays(3)).contains("review_none"));
        assertEquals("Its day came", trail(entry).get(0).endedWhy());
        shown(id, TODAY);
    }

    private List<Snooze> trail(WorklistEntry entry) {
        return QuarkusTransaction.requiringNew().call(() -> worklists.snoozes(entry));
    }

    @Test
    void itIsTakenBackByHandWithTheNameOfWhoDid() {
        long id = caseWithoutReview("Snooze-Hand");
        WorklistEntry entry = entry(id, "review_none");
        putOff(entry, TODAY.plusDays(1), "Waiting");
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/today/entries/" + entry.id());
        lead.submit(path(entry) + "/end", Map.of());
        assertEquals(200, lead.status());
        assertEquals(List.of("review_none"), shown(id, TODAY));
        Snooze ended = trail(entry).get(0);
        assertEquals("Taken back by T. Lead", ended.endedWhy() + " by " + ended.endedBy());
        assertTrue(lead.open("/today/entries/" + entry.id()).select("section[aria-labelledby=trail]").text().contains("Taken back, T. Lead"));
        lead.open("/clinic");
        assertTrue(lead.page().text().contains("put off on Today") && lead.page().text().contains("took back on Today"), "the audit trail says so");
    }

    @Test
    void withoutReasonOrDayOrBeyondItsBoundNothingIsPutOff() {
        long id = caseWithoutReview("Snooze-Bounds");
        WorklistEntry entry = entry(id, "review_none");
        for (LocalDate day : List.of(TODAY, TODAY.minusDays(1), TODAY.plusDays(8))) {
            Visitor visitor = putOff(entry, day, "Some reason");
            assertEquals(422, visitor.status(), day.toString());
            assertEquals("Some reason", visitor.page().select("[name=reason]").text());
            assertFalse(visitor.page().select("#backOn-error").isEmpty());
        }
        assertEquals(422, putOff(entry, TODAY.plusDays(1), " ").status());
        assertEquals(List.of("review_none"), shown(id, TODAY));
        assertEquals(200, putOff(entry, TODAY.plusDays(7), "The most it may").status());
    }

    /** Safety rule of ours: a flag that waits for a call is never put off, one with a call on record for the rest of the day. */
    @Test
    void aFlagWaitingForACallCannotBePutOffAndASeenOneForTheDayAlone() {
        long id = caseWithoutReview("Snooze-Flag");
        long screen = cases.screen(id, TODAY, "POSITIVE", "", true);
        cases.flag(id, screen, "EMERGENCY_NOW", TODAY);
        WorklistEntry call = entry(id, "red_flag_call");
        assertTrue(accounts.visitor(Role.CLINICIAN).open(path(call)).text().contains("This entry cannot be put off"));
        Visitor forged = accounts.visitor(Role.CLINICIAN);
        String token = forged.open("/sign-in").select("input[name=csrf-token]").val();
        forged.post(path(call), Map.of("csrf-token", List.of(token), "backOn", List.of(TODAY.plusDays(1).toString()), "reason", List.of("x"), "version", List.of("0")));
        assertEquals(422, forged.status());
        cases.call(id, TODAY);
        WorklistEntry seen = entry(id, "red_flag_seen");
        assertEquals(422, putOff(seen, TODAY.plusDays(2), "Tomorrow is too late already").status());
        assertEquals(200, putOff(seen, TODAY.plusDays(1), "The doctor rings back at four").status());
        assertFalse(shown(id, TODAY).contains("red_flag_seen"));
        assertTrue(shown(id, TODAY.plusDays(1)).contains("red_flag_seen"));
        shown(id, TODAY);
    }

    @Test
    void aWorseFactBringsItBackAtOnce() {
        long id = caseWithoutReview("Snooze-Worse");
        cases.sql("update case_file set next_review_on = date '2999-01-01' where id = %d", id);
        LocalDate found = LocalDate.of(2026, 3, 10);
        cases.finding(id, found, found);
        putOff(entry(id, "finding_not_done"), TODAY.plusDays(14), "The desk is ordered");
        assertEquals(List.of(), shown(id, TODAY));
        cases.finding(id, found, found.plusDays(1));
        assertEquals(List.of("finding_not_done"), shown(id, TODAY), "two changes not done are worse than one");
        assertEquals("It became worse than when it was put off", trail(entry(id, "finding_not_done")).get(0).endedWhy());
    }

    @Test
    void aNewFlagBringsBackEverythingOfTheCase() {
        long id = caseWithoutReview("Snooze-New-Flag");
        WorklistEntry entry = entry(id, "review_none");
        putOff(entry, TODAY.plusDays(5), "Quiet case");
        cases.report(id, TODAY, "numb saddle", true, false);
        assertEquals(List.of("own_report_emergency", "review_none"), shown(id, TODAY));
        assertEquals("A new flag or warning sign came up in the case", trail(entry).get(0).endedWhy());
    }

    @Test
    void whoPutsOffFromAnOldPageIsTold() {
        long id = caseWithoutReview("Snooze-Stale");
        WorklistEntry entry = entry(id, "review_none");
        Visitor slow = accounts.visitor(Role.LEAD);
        slow.open(path(entry));
        putOff(entry, TODAY.plusDays(1), "First");
        Visitor quick = accounts.visitor(Role.CLINICIAN);
        quick.open("/today/entries/" + entry.id());
        quick.submit(path(entry) + "/end", Map.of());
        slow.submit(path(entry), Map.of("backOn", TODAY.plusDays(2).toString(), "reason", "Second"));
        assertEquals(409, slow.status());
        assertEquals("Second", slow.page().select("[name=reason]").text());
        assertEquals(1, trail(entry).size());
    }
}
