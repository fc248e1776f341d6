package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
@Tag("own-clinic")
@TestProfile(CaseloadOnH2.class)
class GroupReportPagesTest {

    @Inject
    SeededClinic seeded;

    @Inject
    TestAccounts accounts;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    private String list;
    private ReportPeriod period;

    @BeforeEach
    void anEmployerWithEnoughPeople() throws Exception {
        seeded.fill();
        period = ReportPeriod.around(LocalDate.now(clock)).before();
        list = "/employers/" + busiest(period) + "/group-report";
    }

    /** The employer with most patients whose cases opened in a half-year, and of whom no report is signed. */
    private long busiest(ReportPeriod of) {
        return QuarkusTransaction.requiringNew().call(() -> ((Number) db.createNativeQuery("select employer_id from case_outcome where employer_id is not null and opened_on between ?1 and ?2"
                + " and not exists (select 1 from group_report r where r.employer_id = case_outcome.employer_id and r.period = ?3) group by employer_id order by count(*) desc limit 1")
                .setParameter(1, of.first()).setParameter(2, of.last()).setParameter(3, of.key()).getSingleResult()).longValue());
    }

    @Test
    void cliniciansDraftAndTheLeadSigns() {
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open(list);
        assertEquals(403, assistant.status());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        assertEquals("Group reports", clinician.open(list).select("h1").text());
        Document draft = clinician.open(list + "/" + period.key());
        assertTrue(draft.text().contains("The lead signs group reports"));
        clinician.post(list + "/" + period.key() + "/sign", Map.of("csrf-token", List.of(draft.select("input[name=csrf-token]").first().val())));
        assertEquals(403, clinician.status());
        clinician.open(list + "/" + ReportPeriod.around(LocalDate.now(clock)).key());
        assertEquals(404, clinician.status(), "a half-year that is not over");
        clinician.open(list + "/2024-h3");
        assertEquals(404, clinician.status());
        clinician.open(list + "/" + period.key() + "/report.pdf");
        assertEquals(404, clinician.status(), "nothing is signed");
    }

    @Test
    void aSignedReportIsArchivableKeptAndIssuedAgainAsItIs() throws Exception {
        Visitor lead = accounts.visitor(Role.LEAD);
        String path = list + "/" + period.key();
        lead.open(path);
        lead.submit(path, Map.of("comment", "We thank you for the new chairs in the north hall."));
        assertEquals(200, lead.status(), lead.page().text());
        String people = lead.page().select("#numbers").first().closest("section").text();
        assertFalse(people.contains("Fewer than ten people were seen"), people);
        lead.page().select("form#edit").attr("action", path + "/sign");
        lead.submit(path + "/sign", Map.of("password", "wrong"));
        assertEquals(422, lead.status());
        lead.page().select("form#edit").attr("action", path + "/sign");
        lead.submit(path + "/sign", Map.of("password", TestAccounts.PASSWORD));
        assertEquals(200, lead.status(), lead.page().text());
        String fingerprint = lead.page().select(".fingerprint").text();
        byte[] file = pdf(lead, path);
        assertEquals(LetterPdf.sha256(file), fingerprint);
        Path kept = Files.createTempFile("group", ".pdf");
        Files.write(kept, file);
        assertTrue(PreflightParser.validate(kept.toFile()).isValid());
        Files.delete(kept);
        String text = PrintedPages.text(file);
        assertTrue(text.contains("We thank you for the new chairs") && text.contains("Signed electronically on") && text.contains("–"), text);
        assertNobodyIsNamed(text);
        // one more case in the same half-year, recorded late: a further copy is the same file, and the page says the same
        String before = lead.open(path).select("#numbers").first().closest("section").text();
        anotherCase(Long.parseLong(list.replaceAll("\\D+(\\d+).*", "$1")), period.first().plusDays(3));
        assertEquals(before, lead.open(path).select("#numbers").first().closest("section").text());
        assertArrayEquals(file, pdf(lead, path));
        lead.open(list);
        assertTrue(lead.page().text().contains("signed"), lead.page().text());
        // nothing writes on it any more
        Visitor late = accounts.visitor(Role.LEAD);
        late.open(list + "/" + period.before().key());
        String token = late.page().select("input[name=csrf-token]").first().val();
        late.post(path, Map.of("csrf-token", List.of(token), "comment", List.of("Later.")));
        assertEquals(409, late.status());
        late.post(path + "/sign", Map.of("csrf-token", List.of(token), "password", List.of(TestAccounts.PASSWORD)));
        assertEquals(409, late.status(), "what is signed is not signed again");
        for (String sql : List.of("update group_report set comment = 'x', version = version + 1 where period = '" + period.key() + "'", "delete from group_report where period = '"
                + period.key() + "'")) {
            assertThrows(RuntimeException.class, () -> QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery(sql).executeUpdate()), sql);
        }
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update signed_group_report set pdf = ?1 where sha256 = ?2").setParameter(1, new byte[] {1, 2})
                .setParameter(2, fingerprint).executeUpdate());
        lead.open(path + "/report.pdf");
        assertTrue(lead.status() >= 400 && lead.page().text().contains("is not the one that was signed"), lead.page().text());
    }

    private void anotherCase(long employer, LocalDate day) {
        QuarkusTransaction.requiringNew().run(() -> {
            db.createNativeQuery("update case_outcome set opened_on = ?1 where case_file_id = (select min(case_file_id) from case_outcome where employer_id = ?2 and opened_on < ?1)")
                    .setParameter(1, day).setParameter(2, employer).executeUpdate();
        });
    }

    private void assertNobodyIsNamed(String text) {
        List<Object[]> names = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select p.familyName, p.fileNumber from Patient p", Object[].class).getResultList());
        for (Object[] name : names) {
            assertFalse(text.contains((String) name[0]) || text.contains((String) name[1]), () -> name[0] + " in " + text);
        }
        for (String clinical : List.of("NDI", "/10", "red flag", "diagnos", "exercise", "treatment")) {
            assertFalse(text.contains(clinical), clinical);
        }
    }

    private static byte[] pdf(Visitor visitor, String path) {
        visitor.open(path + "/report.pdf");
        assertEquals("application/pdf", visitor.answer().contentType());
        assertTrue(visitor.answer().header("Content-Disposition").matches("attachment; filename=\"group-report-GR-\\d+-\\d{4}-H[12].pdf\""));
        return visitor.answer().asByteArray();
    }

    @Test
    void whatChangedMeanwhileIsNotSigned() {
        ReportPeriod earlier = period.before().before();
        String path = "/employers/" + busiest(earlier) + "/group-report/" + earlier.key();
        Visitor lead = accounts.visitor(Role.LEAD);
        Visitor other = accounts.visitor(Role.LEAD);
        lead.open(path);
        other.open(path);
        other.submit(path, Map.of("comment", "Another word."));
        assertEquals(200, other.status());
        lead.submit(path, Map.of("comment", "My word."));
        assertEquals(409, lead.status());
        assertTrue(lead.page().text().contains("Another word.") && lead.page().select("#comment").text().equals("My word."), lead.page().text());
        other.open(path);
        other.page().select("form#edit").attr("action", path + "/sign");
        other.page().select("input[name=seen]").val("0000000000000000");
        other.submit(path + "/sign", Map.of("password", TestAccounts.PASSWORD));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("The numbers changed since you opened the page"));
        assertTrue(other.page().select(".fingerprint").isEmpty());
    }

    @Test
    void aNameInTheCommentIsRefused() {
        ReportPeriod earlier = period.before();
        long employer = busiest(earlier);
        String name = QuarkusTransaction.requiringNew().call(() -> (String) db.createQuery("select min(p.familyName) from Patient p where p.employer.id = ?1").setParameter(1, employer)
                .getSingleResult());
        String path = "/employers/" + employer + "/group-report/" + earlier.key();
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open(path);
        lead.submit(path, Map.of("comment", "Ask " + name + " about it."));
        assertEquals(422, lead.status());
        assertTrue(lead.page().select("#comment-error").text().contains(name));
        assertEquals("Ask " + name + " about it.", lead.page().select("#comment").text());
        lead.open(path);
        lead.submit(path, Map.of("comment", "x".repeat(2001)));
        assertEquals(422, lead.status());
    }

    @Test
    void fewerThanTenPeopleGiveNoNumber() {
        ReportPeriod longAgo = new ReportPeriod(1950, 1);
        Visitor lead = accounts.visitor(Role.LEAD);
        Document page = lead.open(list + "/" + longAgo.key());
        assertTrue(page.text().contains("Fewer than ten people were seen in this half-year"));
        assertTrue(page.select("table").isEmpty());
        lead.open(list + "/" + longAgo.key() + "/page-1.png");
        assertEquals("image/png", lead.answer().contentType());
        lead.open(list + "/" + longAgo.key() + "/page-9.png");
        assertEquals(404, lead.status());
    }

    /** A person with two cases in one half-year counts once; one of the next half-year not at all. */
    @Test
    void halfYearsDoNotOverlapAndLeaveNoDayOut() {
        ReportPeriod first = new ReportPeriod(2026, 1);
        assertEquals(LocalDate.of(2026, 6, 30), first.last());
        assertEquals(first.last().plusDays(1), new ReportPeriod(2026, 2).first());
        assertEquals(new ReportPeriod(2025, 2), first.before());
        assertEquals(first.first(), first.before().last().plusDays(1));
        for (LocalDate day = LocalDate.of(2024, 1, 1); day.getYear() < 2026; day = day.plusDays(1)) {
            ReportPeriod of = ReportPeriod.around(day);
            assertTrue(!day.isBefore(of.first()) && !day.isAfter(of.last()), of + " " + day);
        }
        assertFalse(first.ended(LocalDate.of(2026, 6, 30)));
        assertTrue(first.ended(LocalDate.of(2026, 7, 1)));
        assertTrue(ReportPeriod.of("2026-h3").isEmpty() && ReportPeriod.of("0000-h1").isEmpty() && ReportPeriod.of("no_such").isEmpty());
    }
}
