package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.caseload.statistics.CurveLimits;
import org.steadwork.caseload.statistics.Followed;
import org.steadwork.caseload.statistics.KaplanMeier;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
@Tag("own-clinic")
@TestProfile(CaseloadOnH2.class)
class CaseloadPagesTest {

    private static final List<String> PAGES = List.of("/caseload", "/caseload/time", "/caseload/work-place", "/caseload/quality");

    @Inject
    SeededClinic seeded;

    @Inject
    TestAccounts accounts;

    @Inject
    CaseFiles files;

    @Inject
    Visits visits;

    @Inject
    Measures measures;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    private String all;

    @BeforeEach
    void invented() throws Exception {
        seeded.fill();
        all = "from=" + LocalDate.now(clock).minusYears(6) + "&to=" + LocalDate.now(clock);
    }

    @Test
    void onlyCliniciansSeeTheCaseload() {
        for (String page : PAGES) {
            Visitor assistant = accounts.visitor(Role.ASSISTANT);
            assistant.open(page);
            assertEquals(403, assistant.status(), page);
            assertTrue(assistant.open("/").select(".top__nav a[href=/caseload]").isEmpty());
            Visitor clinician = accounts.visitor(Role.CLINICIAN);
            assertEquals("Caseload", clinician.open(page + "?" + all).select("h1").text());
            assertFalse(clinician.open("/").select(".top__nav a[href=/caseload]").isEmpty());
        }
    }

    @Test
    void aWrongChoiceIsToldAtItsFieldAndKept() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        for (String wrong : List.of("from=2026-02-31&to=2026-03-01", "from=2026-03-01&to=2026-02-01", "from=&to=", "region=elsewhere", "clinician=12", "employer=no",
                "complaint=" + "x".repeat(101), "clinician=99999999999999999999")) {
            Document page = visitor.open("/caseload?" + (wrong.contains("from") ? "" : all + "&") + wrong);
            assertEquals(422, visitor.status(), wrong);
            assertFalse(page.select(".field__error").isEmpty(), wrong);
            assertTrue(page.select(".sec").isEmpty(), wrong);
            visitor.open("/caseload/responders.csv?" + (wrong.contains("from") ? "" : all + "&") + wrong);
            assertEquals(422, visitor.status(), wrong);
        }
        assertEquals("2026-02-31", visitor.open("/caseload?from=2026-02-31&to=2026-03-01").select("#from").val());
        for (String wrong : List.of("first=region-neck", "first=region-neck&second=region-neck", "first=no&second=region-neck")) {
            visitor.open("/caseload/time?" + all + "&" + wrong);
            assertEquals(422, visitor.status(), wrong);
        }
        visitor.open("/caseload/no_such.csv?" + all);
        assertEquals(404, visitor.status());
    }

    @Test
    void aPeriodWithoutACaseSaysWhatToDo() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        for (String page : PAGES) {
            Document empty = visitor.open(page + "?from=1901-01-01&to=1901-12-31");
            assertEquals(200, visitor.status());
            assertTrue(empty.select(".empty").text().contains("Widen the period"), page);
            assertEquals("0 cases", empty.select(".chosen__go [role=status]").text());
        }
        visitor.open("/caseload/responders.csv?from=1901-01-01&to=1901-12-31");
        assertEquals(200, visitor.status());
    }

    @Test
    void fewCasesGiveNoRate() {
        List<Long> first = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.openedOn from CaseFile c where c.id between ?1 and ?2 order by c.openedOn desc",
                LocalDate.class).setParameter(1, SeededClinic.FIRST).setParameter(2, SeededClinic.LAST).setMaxResults(5).getResultList()).stream()
                .map(day -> ChronoUnit.DAYS.between(day, LocalDate.now(clock))).toList();
        LocalDate from = LocalDate.now(clock).minusDays(first.get(4));
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Document page = visitor.open("/caseload?from=" + from + "&to=" + LocalDate.now(clock));
        assertTrue(page.select("table").get(0).select("td").eachText().stream().noneMatch(cell -> cell.contains("%")), page.text());
        assertTrue(page.select("figure").isEmpty());
        assertTrue(page.select("table").get(0).text().contains("fewer than 10"));
        assertTrue(visitor.open("/caseload/time?from=" + from + "&to=" + LocalDate.now(clock)).text().contains("No curve with fewer than 10 people"));
    }

    /** The verdicts of the page Outcomes, case by case from the entities, against the page's counts. */
    @Test
    void theCountsAreThoseOfThePagesOfTheCases() {
        int pairs = 0;
        int important = 0;
        int worse = 0;
        int responders = 0;
        for (long id = SeededClinic.FIRST; id <= SeededClinic.LAST; id++) {
            long caseId = id;
            Optional<MeasureCourse> pain = QuarkusTransaction.requiringNew().call(() -> measures.of(caseId)).stream()
                    .filter(course -> course.instrument().key().equals("nprs_worst")).findFirst();
            if (pain.isPresent() && pain.get().sinceFirst().isPresent()) {
                ChangeVerdict verdict = pain.get().sinceFirst().get();
                pairs++;
                important += verdict.kind() == ChangeVerdict.Kind.IMPORTANT ? 1 : 0;
                worse += verdict.kind() == ChangeVerdict.Kind.WORSE ? 1 : 0;
                responders += verdict.improvement() >= 2 && verdict.improvement() / verdict.earlier() >= 0.3 ? 1 : 0;
            }
        }
        Document page = accounts.visitor(Role.CLINICIAN).open("/caseload?" + all);
        assertEquals(List.of(SeededClinic.CASES, pairs, 0, important), counts(page, "Worst pain: important change"));
        assertEquals(List.of(SeededClinic.CASES, pairs, 0, worse), counts(page, "Worst pain: worse beyond error"));
        assertEquals(List.of(SeededClinic.CASES, pairs, 0, responders), counts(page, "Worst pain down by 30 %"));
        assertTrue(important > 50 && worse > 5 && responders > 50, important + ", " + worse + ", " + responders);
    }

    private static List<Integer> counts(Document page, String row) {
        Element found = page.select("th[scope=row]").stream().filter(name -> name.text().equals(row)).findFirst().orElseThrow();
        return found.parent().select("td").stream().limit(4).map(cell -> Integer.valueOf(cell.text().replaceAll("\\D", ""))).toList();
    }

    /** Time to full duties from the work statuses as entities, told anew: the first spell of full duties after the absence that nothing ends within 28 days. */
    @Test
    void theCurveIsThatOfTheWorkStatuses() {
        LocalDate today = LocalDate.now(clock);
        List<Followed> cohort = new ArrayList<>();
        for (long id = SeededClinic.FIRST; id <= SeededClinic.LAST; id++) {
            long caseId = id;
            CaseFile file = QuarkusTransaction.requiringNew().call(() -> files.findById(caseId));
            List<WorkStatus> spells = QuarkusTransaction.requiringNew().call(() -> db.createQuery("from WorkStatus where caseFile.id = ?1 order by from", WorkStatus.class)
                    .setParameter(1, caseId).getResultList());
            spells.stream().filter(spell -> spell.code() == WorkStatusCode.OFF).findFirst().ifPresent(off -> cohort.add(followed(file, spells, off, today)));
        }
        assertTrue(cohort.size() > 50, cohort.size() + " were off");
        KaplanMeier curve = KaplanMeier.of(cohort);
        Document page = accounts.visitor(Role.CLINICIAN).open("/caseload/time?" + all);
        String words = page.select("#return").first().closest("section").text();
        assertTrue(words.contains(curve.started() + " cases, " + curve.events() + " back at full duties"), words);
        assertTrue(words.contains("by day " + Math.round(curve.median().orElseThrow())), words);
        long low = Math.round(curve.medianLow(CurveLimits.LOG_LOG, 0.95).orElseThrow());
        assertTrue(words.contains("limits " + low + " to"), words);
    }

    private Followed followed(CaseFile file, List<WorkStatus> spells, WorkStatus off, LocalDate today) {
        for (int i = spells.indexOf(off) + 1; i < spells.size(); i++) {
            if (spells.get(i).code() == WorkStatusCode.FULL) {
                boolean last = i + 1 == spells.size();
                long days = last ? Long.MAX_VALUE : ChronoUnit.DAYS.between(spells.get(i).from(), spells.get(i + 1).from());
                if (last || days >= 28) {
                    boolean lasted = !last || ChronoUnit.DAYS.between(spells.get(i).from(), today) >= 28;
                    return new Followed(ChronoUnit.DAYS.between(off.from(), spells.get(i).from()), lasted);
                }
            }
        }
        LocalDate contact = QuarkusTransaction.requiringNew().call(() -> visits.of(file.id())).stream().filter(visit -> visit.attendance() == Attendance.ATTENDED)
                .map(visit -> visit.visitedOn()).max(LocalDate::compareTo).orElse(file.openedOn());
        LocalDate status = spells.get(spells.size() - 1).from();
        LocalDate report = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select max(r.reportedOn) from SymptomReport r where r.caseFile.id = ?1", LocalDate.class)
                .setParameter(1, file.id()).getSingleResult());
        LocalDate score = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select max(s.scoredOn) from Score s where s.caseFile.id = ?1", LocalDate.class)
                .setParameter(1, file.id()).getSingleResult());
        LocalDate end = List.of(contact, status, report == null ? contact : report, score == null ? contact : score, file.openedOn()).stream().max(LocalDate::compareTo).orElseThrow();
        return new Followed(Math.max(0, ChronoUnit.DAYS.between(off.from(), end)), false);
    }

    @Test
    void findingsAreCountedAsRecorded() {
        Object[] counted = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(f), sum(case when f.doneOn is not null then 1 else 0 end) from Finding f"
                + " where f.criterionId = 'PH-1' and f.caseFile.id between ?1 and ?2", Object[].class).setParameter(1, SeededClinic.FIRST).setParameter(2, SeededClinic.LAST).getSingleResult());
        Document page = accounts.visitor(Role.CLINICIAN).open("/caseload/work-place?" + all);
        List<Integer> telephone = counts(page, "Telephone");
        assertEquals(((Number) counted[0]).intValue(), telephone.get(0));
        assertEquals(((Number) counted[1]).intValue(), telephone.get(1));
        assertTrue(page.select("#associations").first().closest("section").text().contains("Exploratory"));
    }

    @Test
    void theChoiceNarrowsTheCasesAndGoesAlong() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Document page = visitor.open("/caseload?" + all + "&region=low_back&complaint=sitting");
        long expected = QuarkusTransaction.requiringNew().call(() -> ((Number) db.createNativeQuery("select count(*) from case_outcome o join case_file c"
                + " on c.id = o.case_file_id where o.region = 'LOW_BACK' and c.complaint like '%sitting%'").getSingleResult()).longValue());
        assertEquals(expected + " cases", page.select(".chosen__go [role=status]").text());
        for (Element link : page.select(".case-nav a, a[href*=.csv]")) {
            assertTrue(link.attr("href").contains("region=low_back") && link.attr("href").contains("complaint=sitting"), link.attr("href"));
        }
        visitor.openEncoded("/caseload?" + all + "&complaint=%25");
        assertEquals("0 cases", visitor.page().select(".chosen__go [role=status]").text(), "a per cent sign is no wildcard");
        Document compared = visitor.open("/caseload/time?" + all + "&first=region-neck&second=region-low_back");
        assertTrue(compared.select("#compare").first().closest("section").text().contains("Log-rank chi-square"), compared.text());
        assertTrue(compared.text().contains("A description"));
    }

    @Test
    void everyTableCanBeTakenAway() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        List<String> files = new ArrayList<>();
        for (String page : PAGES) {
            visitor.open(page + "?" + all).select("a[href*=.csv]").forEach(link -> files.add(link.attr("href")));
        }
        assertTrue(files.size() >= 12, files.toString());
        for (String file : files) {
            visitor.open(file);
            assertEquals(200, visitor.status(), file);
            assertTrue(visitor.answer().contentType().startsWith("text/csv"), file);
            String text = visitor.answer().asString();
            assertTrue(text.lines().count() >= 3, text);
            assertTrue(text.lines().noneMatch(line -> line.matches("^[=+@\\t].*|.*,\"?[=+@\\t].*")), text);
        }
        assertEquals("'=1+1", CsvFile.harmless("=1+1"));
        assertEquals("'-2+3", CsvFile.harmless("-2+3"));
        assertEquals("'@x", CsvFile.harmless("@x"));
        assertEquals("-2.5", CsvFile.harmless("-2.5"));
        assertEquals("'\tx", CsvFile.harmless("\tx"));
        assertEquals("-0.5 to 0.5", CsvFile.harmless("-0.5 to 0.5"));
        assertEquals("'-1 to =x", CsvFile.harmless("-1 to =x"));
    }

    /** Counted by the database itself, for the pages read past Hibernate; the numbers of statements do not follow the number of cases. */
    @Test
    void aPageTakesAFixedNumberOfStatements() {
        String few = "from=" + LocalDate.now(clock).minusMonths(2) + "&to=" + LocalDate.now(clock);
        for (String page : PAGES) {
            Visitor visitor = accounts.visitor(Role.CLINICIAN);
            visitor.open(page + "?" + all);
            long many = statements(() -> visitor.open(page + "?" + all));
            long less = statements(() -> visitor.open(page + "?" + few));
            assertEquals(many, less, page);
            assertTrue(many <= 14, page + " takes " + many);
        }
    }

    private long statements(Runnable work) {
        execute("set query_statistics false");
        execute("set query_statistics true");
        work.run();
        long count = QuarkusTransaction.requiringNew().call(() -> ((Number) db.createNativeQuery("select coalesce(sum(execution_count), 0) from information_schema.query_statistics"
                + " where lower(sql_statement) like 'select%' and lower(sql_statement) not like '%query_statistics%' and lower(sql_statement) not like '%sign_in_session%'"
                + " and lower(sql_statement) not like '%nextval%' and lower(sql_statement) not like '%next value%'").getSingleResult()).longValue());
        execute("set query_statistics false");
        assertTrue(count > 0, "nothing was counted");
        return count;
    }

    private void execute(String sql) {
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery(sql).executeUpdate());
    }

    @Test
    void everyDefinitionStandsOnePageAwayWithItsSource() {
        Document page = accounts.visitor(Role.CLINICIAN).open("/caseload/definitions");
        for (String title : List.of("Important change", "Time to return to full duties", "Log-rank comparison", "Visits missed")) {
            assertTrue(page.select("dt").eachText().contains(title), title);
        }
        assertTrue(page.select("dd").eachText().stream().allMatch(words -> words.length() > 40));
        String wide = accounts.visitor(Role.CLINICIAN).open("/caseload?" + all).select("details.defined dt").eachText().stream().collect(Collectors.joining());
        assertTrue(wide.contains("Pain down by 30 %"), wide);
    }
}
