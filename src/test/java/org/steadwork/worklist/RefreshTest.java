package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.arc.ClientProxy;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.NextStep;
import org.steadwork.casefile.NextSteps;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The stored list: what left is told with what was done, pages reach everything, a large clinic is looked at case by case. */
@QuarkusTest
class RefreshTest {

    private static final LocalDate TODAY = LocalDate.now();

    @Inject
    EntityManager db;

    @Inject
    RuleCases cases;

    @Inject
    Worklists worklists;

    @Inject
    Refresh refresh;

    @Inject
    PageRefresh pages;

    @Inject
    Asking asking;

    @Inject
    NextSteps nextSteps;

    @Inject
    AuditTrail audit;

    @Inject
    TestAccounts accounts;

    @Inject
    Statements statements;

    private Worklist list(long caseId) {
        return on(new Filter(new Whose(null, Whose.ALL), "", caseId, 1));
    }

    /** In a session of its own, as each request has one. */
    private Worklist on(Filter filter) {
        return QuarkusTransaction.requiringNew().call(() -> worklists.on(TODAY, filter));
    }

    private static WorklistEntry cleared(Worklist list, String rule) {
        return list.cleared().rows().stream().filter(entry -> entry.rule().equals(rule)).findFirst().orElseThrow(() -> new AssertionError("no " + rule));
    }

    @Test
    void whatLeftTodayIsToldWithTheActThatClearedIt() {
        long id = cases.open("Left-Today");
        assertTrue(list(id).rows().stream().anyMatch(entry -> entry.rule().equals("review_none")));
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/edit");
        visitor.submit("/cases/" + id + "/edit", Map.of("nextReviewOn", TODAY.plusDays(9).toString()));
        assertEquals(200, visitor.status());
        Worklist after = list(id);
        assertFalse(after.rows().stream().anyMatch(entry -> entry.rule().equals("review_none")));
        WorklistEntry left = cleared(after, "review_none");
        assertEquals("changed case details (T. Clinician)", left.clearedAct());
        assertTrue(visitor.open("/?case=" + id).select("section[aria-labelledby=aside]").text().contains("After: changed case details (T. Clinician)."));
        assertTrue(visitor.open("/today/entries/" + left.id()).text().contains("It left the list"));
    }

    @Test
    void whatLeavesWithoutAnActSaysSo() {
        long id = cases.open("Left-Alone");
        list(id);
        cases.sql("update case_file set next_review_on = date '2999-01-01' where id = %d", id);
        assertNull(cleared(list(id), "review_none").clearedAct());
        assertTrue(accounts.visitor(Role.CLINICIAN).open("/?case=" + id).text().contains("Nothing was done in the case since: its facts no longer meet the rule."));
        cases.sql("update case_file set next_review_on = null where id = %d", id);
        assertTrue(list(id).rows().stream().anyMatch(entry -> entry.rule().equals("review_none")), "it stands again");
        assertTrue(list(id).cleared().rows().isEmpty());
    }

    @Test
    void aFeatureThatFailsIsSaidAndTakesNothingFromTheOthers() {
        long id = cases.open("Silent-Feature");
        list(id);
        SilentAttention.fails = true;
        try {
            cases.flag(id, cases.screen(id, TODAY, "POSITIVE", "", true), "SAME_DAY", TODAY);
            Worklist list = list(id);
            assertFalse(list.upToDate());
            assertTrue(list.rows().stream().anyMatch(entry -> entry.rule().equals("red_flag_call")), "the others are asked all the same");
            assertTrue(accounts.visitor(Role.CLINICIAN).open("/").text().contains("This list may be out of date"));
            assertTrue(accounts.visitor(Role.LEAD).open("/team").text().contains("This list may be out of date"));
            audit.record("changed case details", null, id, null);
            assertEquals(Optional.of("Not known"), nextSteps.of(id, TODAY).map(NextStep::label), "unknown is not nothing");
        } finally {
            SilentAttention.fails = false;
        }
        assertTrue(list(id).upToDate());
    }

    /** The map of a case says the same whether it reads the list or asks every rule. */
    @Test
    void theNextStepOfACaseIsTheSameFromTheListAndFromTheRules() {
        long id = cases.open("Next-Step");
        audit.record("opened case", null, id, null);
        Optional<NextStep> asked = asking.entries(TODAY, CaseScope.one(id)).entries().stream()
                .min(Comparator.comparing(Attention.Entry::urgency).thenComparing(Attention.Entry::since))
                .map(entry -> new NextStep(entry.label(), entry.reason(), entry.action(), entry.href()));
        assertTrue(asked.isPresent());
        assertFalse(knows(id), "its opening is newer than the list");
        assertEquals(asked, nextSteps.of(id, TODAY));
        assertTrue(refresh.runWhole(TODAY));
        for (int i = 0; i <= 100; i++) { // the list looks some lines back, for one stored a moment late
            audit.record("viewed list", null, null, null);
        }
        list(id);
        assertTrue(knows(id));
        long read = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> nextSteps.of(id, TODAY)));
        assertEquals(3, read, "read from the list");
        assertEquals(asked, nextSteps.of(id, TODAY));
        audit.record("viewed case", null, id, null);
        assertTrue(knows(id), "a look changes nothing");
        audit.record("changed case details", null, id, null);
        assertFalse(knows(id));
        assertFalse(refresh.knows(id, TODAY.plusDays(1)), "another day");
    }

    private boolean knows(long id) {
        return QuarkusTransaction.requiringNew().call(() -> refresh.knows(id, TODAY));
    }

    /** In a clinic too large to be looked at wholly each time, a case comes up to date by its line in the audit trail. */
    @Test
    void aLargeClinicIsLookedAtWhereSomethingWasDone() {
        long done = cases.open("Large-Done");
        long untold = cases.open("Large-Untold");
        refresh.runWhole(TODAY);
        inALargeClinic(() -> {
            Stream.of(done, untold).forEach(id -> cases.sql("update case_file set next_review_on = date '2999-01-01' where id = %d", id));
            QuarkusTransaction.requiringNew().run(() -> audit.record("changed case details", null, done, null));
            assertFalse(rules(done).contains("review_none"), "the trail tells of it");
            assertTrue(rules(untold).contains("review_none"), "nothing told of this one");
            refresh.runWhole(TODAY);
            assertFalse(rules(untold).contains("review_none"), "the look at all of them finds it");
        });
    }

    /** Whoever opens Today while another brings it up to date waits for it, but not for long, and is told. */
    @Test
    void nobodyWaitsLongForAnother() throws Exception {
        long id = cases.open("Waits-Not");
        CountDownLatch looking = new CountDownLatch(1);
        CountDownLatch enough = new CountDownLatch(1);
        SilentAttention.meanwhile = () -> {
            looking.countDown();
            return enough.await(60, TimeUnit.SECONDS);
        };
        try {
            CompletableFuture<Boolean> first = CompletableFuture.supplyAsync(() -> refresh.run(TODAY));
            looking.await();
            SilentAttention.meanwhile = null;
            long began = System.nanoTime();
            Worklist list = list(id);
            assertFalse(list.upToDate());
            assertTrue(System.nanoTime() - began < TimeUnit.SECONDS.toNanos(20), "it gave up waiting");
            enough.countDown();
            assertTrue(first.get(60, TimeUnit.SECONDS));
        } finally {
            SilentAttention.meanwhile = null;
            enough.countDown();
        }
        assertTrue(list(id).upToDate());
    }

    /** The first page of a day over a large clinic begins the look at all cases and does not wait for its end. */
    @Test
    void theFirstPageOfADayDoesNotWaitForAllCases() throws Exception {
        long id = cases.open("First-Of-Day");
        LocalDate tomorrow = TODAY.plusDays(1);
        refresh.runWhole(TODAY);
        CountDownLatch enough = new CountDownLatch(1);
        SilentAttention.meanwhile = () -> enough.await(60, TimeUnit.SECONDS);
        Duration before = ClientProxy.unwrap(pages).patience;
        ClientProxy.unwrap(pages).patience = Duration.ofMillis(200);
        try {
            inALargeClinic(() -> {
                assertFalse(pages.upToDate(tomorrow), "it has only begun");
                assertFalse(pages.upToDate(tomorrow), "another page does not begin a second look");
                SilentAttention.meanwhile = null;
                enough.countDown();
                ClientProxy.unwrap(pages).patience = Duration.ofMinutes(1);
                assertTrue(pages.upToDate(tomorrow), "who has the patience sees it whole");
                assertTrue(QuarkusTransaction.requiringNew().call(() -> refresh.knows(id, tomorrow)));
            });
        } finally {
            SilentAttention.meanwhile = null;
            enough.countDown();
            ClientProxy.unwrap(pages).patience = before;
            refresh.runWhole(TODAY);
        }
    }

    @Test
    void stepsTellTheSameAsOneLook() {
        Stream.of("Step-One", "Step-Two", "Step-Three").forEach(cases::open);
        refresh.runWhole(TODAY);
        List<String> before = standing();
        assertTrue(before.size() >= 3);
        inALargeClinic(() -> {
            long late = cases.open("Step-Late");
            cases.sql("update worklist_entry set reason = 'as it was' where cleared_on is null");
            assertTrue(refresh.runWhole(TODAY));
            List<String> after = standing();
            assertTrue(after.stream().anyMatch(line -> line.startsWith(late + " review_none")), "the last step reaches the newest case");
            assertEquals(before, after.stream().filter(line -> !line.startsWith(late + " ")).toList(), "each step says anew what stands in its cases");
        });
    }

    /** With the look at all cases too much for a page, and its steps of two cases. */
    private void inALargeClinic(Runnable check) {
        Refresh itself = ClientProxy.unwrap(refresh);
        int whole = itself.wholeUpTo;
        int step = itself.casesAStep;
        itself.wholeUpTo = 0;
        itself.casesAStep = 2;
        try {
            check.run();
        } finally {
            itself.wholeUpTo = whole;
            itself.casesAStep = step;
        }
    }

    private List<String> standing() {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("from WorklistEntry e join fetch e.caseFile where e.clearedOn is null", WorklistEntry.class)
                .getResultStream().map(e -> e.caseId() + " " + e.rule() + " " + e.reason()).sorted().toList());
    }

    private List<String> rules(long id) {
        return list(id).rows().stream().map(WorklistEntry::rule).toList();
    }

    @Test
    void oneCaseIsAskedAboutInAFixedNumberOfQueries() {
        long id = cases.open("Asked-One");
        long empty = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> asking.entries(TODAY, CaseScope.one(id))));
        cases.finding(id, TODAY.minusDays(40), TODAY.minusDays(30));
        cases.finding(id, TODAY.minusDays(40), TODAY.minusDays(30));
        cases.report(id, TODAY, "numb", false, false);
        cases.report(id, TODAY, null, false, true);
        cases.status(id, "OFF", TODAY.minusDays(90), null);
        cases.letter(id, "progress_report", TODAY);
        assertEquals(empty, statements.during(() -> QuarkusTransaction.requiringNew().run(() -> asking.entries(TODAY, CaseScope.one(id)))));
        // some are asked only where there is a missed visit at all, however many
        long all = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> asking.entries(TODAY, CaseScope.all())));
        assertTrue(empty <= 30 && all <= 30, "asked in " + empty + " queries, of all cases in " + all);
        cases.finding(cases.open("Asked-Two"), TODAY.minusDays(40), TODAY.minusDays(30));
        assertEquals(all, statements.during(() -> QuarkusTransaction.requiringNew().run(() -> asking.entries(TODAY, CaseScope.all()))));
    }

    /** Asked of the joined case, the numbers would have a database read every score and visit of a clinic to find those of one case. */
    @Test
    void theRowsOfAFewCasesAreSoughtByTheirOwnReference() {
        List<Long> ids = List.of(cases.open("Sought-One"), cases.open("Sought-Two"));
        List<String> sent = statements.textsDuring(() -> QuarkusTransaction.requiringNew().run(() -> asking.entries(TODAY, CaseScope.of(ids))));
        List<String> scoped = sent.stream().filter(sql -> sql.contains(" in (?,?)")).toList();
        assertTrue(scoped.size() >= 15, () -> "hardly any is asked about the two: " + sent);
        assertEquals(List.of(), scoped.stream().filter(sql -> !sql.contains(" from case_file ") && !sql.contains(".case_file_id in (?,?)")).toList());
    }

    /** A case is asked about once after something was done, and one whose line in the trail was stored late is not passed over. */
    @Test
    void aLineOfTheTrailIsGoneByOnceAndALateOneToo() {
        long late = cases.open("Large-Late");
        long prompt = cases.open("Large-Prompt");
        refresh.runWhole(TODAY);
        inALargeClinic(() -> {
            QuarkusTransaction.requiringNew().run(() -> {
                audit.record("changed case details", null, late, null);
                cases.sql("update case_file set next_review_on = date '2999-01-01' where id = %d", late);
                QuarkusTransaction.requiringNew().run(() -> audit.record("changed case details", null, prompt, null));
                assertTrue(refresh.run(TODAY), "what the first transaction does cannot be seen yet");
                long again = statements.during(() -> refresh.run(TODAY));
                assertTrue(again <= 5, "nobody is asked about twice: " + again);
            });
            assertFalse(rules(late).contains("review_none"), "its number is lower than the last that was seen");
        });
    }

    @Test
    void pagesReachEveryEntryOnce() {
        Stream.iterate(1, i -> i <= 13, i -> i + 1).forEach(i -> cases.open("Paged-" + i));
        Filter whole = new Filter(new Whose(null, Whose.ALL), "review_none", null, 1);
        Worklist all = on(whole);
        Worklists itself = ClientProxy.unwrap(worklists);
        int before = itself.pageSize;
        itself.pageSize = 12;
        try {
            int pages = on(whole).pages();
            assertTrue(pages > 1, "more than one page");
            assertEquals((all.count() + 11) / 12, pages);
            List<Long> reached = Stream.iterate(1, page -> page <= pages, page -> page + 1)
                    .flatMap(page -> on(new Filter(whole.whose(), whole.rule(), null, page)).rows().stream()).map(WorklistEntry::id).toList();
            assertEquals(all.rows().stream().map(WorklistEntry::id).toList(), reached);
            assertEquals(pages, on(new Filter(whole.whose(), whole.rule(), null, 99_999)).filter().page(), "beyond the last stands the last");
        } finally {
            itself.pageSize = before;
        }
    }

    @Test
    void oneSeesOnesOwnCasesAndWhatIsForNowInAll() {
        long theirs = cases.open("Mine-Not");
        cases.flag(theirs, cases.screen(theirs, TODAY, "POSITIVE", "", true), "SAME_DAY", TODAY);
        Worklist mine = on(new Filter(new Whose(accounts.of(Role.LEAD).id(), Whose.MINE), "", theirs, 1));
        assertEquals(List.of("red_flag_call"), mine.rows().stream().map(WorklistEntry::rule).toList());
        Visitor lead = accounts.visitor(Role.LEAD);
        assertEquals(List.of("mine"), lead.open("/?who=mine").select("#who option[selected]").eachAttr("value"));
        assertEquals(List.of("mine"), lead.open("/").select("#who option[selected]").eachAttr("value"), "Today opens as it was left");
        assertEquals(List.of("all"), lead.open("/?who=%3Cx&page=-1&rule=%22").select("#who option[selected]").eachAttr("value"));
    }
}
