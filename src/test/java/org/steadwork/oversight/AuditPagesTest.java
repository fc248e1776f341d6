package org.steadwork.oversight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.Role;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEntry;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Looking for entries of the audit trail, taking them along as a file, and seeing who else reads a record. */
@QuarkusTest
class AuditPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    AuditTrail audit;

    @Inject
    Statements statements;

    @Test
    void entriesAreFoundByPersonPatientActionAndDay() {
        String family = "Auditley-" + System.nanoTime();
        long id = cases.open("Perpetua", family);
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/cases/" + id + "/symptoms");
        clinician.open("/cases/" + id + "/outcomes");
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/cases/" + id + "/symptoms");
        lead.open("/clinic/audit?patient=" + family);
        assertEquals(3, lead.page().select("tbody tr").size(), lead.page().text());
        lead.open("/clinic/audit?patient=" + family + "&action=Symptoms");
        assertEquals(2, lead.page().select("tbody tr").size());
        lead.open("/clinic/audit?patient=" + family + "&action=symptoms&person=" + accounts.of(Role.LEAD).id());
        assertEquals(1, lead.page().select("tbody tr:contains(T. Lead)").size());
        assertTrue(lead.page().select("tbody tr").text().contains("Perpetua " + family));
        lead.open("/clinic/audit?patient=" + family + "&from=1 Jan 2199");
        assertTrue(lead.page().text().contains("No entry fits"));
        lead.open("/clinic/audit?patient=" + family + "&until=1 Jan 2000");
        assertTrue(lead.page().text().contains("No entry fits"));
        lead.open("/clinic/audit?from=yesterday");
        assertTrue(lead.page().select("#from-error").text().contains("must be a date"));
        lead.open("/clinic/audit?patient=%25");
        assertTrue(lead.page().text().contains("No entry fits"), "a percent sign is a percent sign");
    }

    @Test
    void longTrailsComeInPagesWithAFixedNumberOfQueries() {
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/audit");
        long few = statements.during(() -> lead.open("/clinic/audit?action=paged-once"));
        for (int i = 0; i < 120; i++) {
            audit.record("paged-once", null, null, "entry " + i);
        }
        assertEquals(few, statements.during(() -> lead.open("/clinic/audit?action=paged-once")));
        assertEquals(50, lead.page().select("tbody tr").size());
        assertTrue(lead.page().text().contains("Page 1 of 3"));
        lead.open(lead.page().select("nav a:contains(Older)").attr("href"));
        lead.open(lead.page().select("nav a:contains(Older)").attr("href"));
        assertEquals(20, lead.page().select("tbody tr").size());
        assertTrue(lead.page().text().contains("entry 0"));
        assertEquals(0, lead.page().select("nav a:contains(Older)").size());
        lead.open("/clinic/audit?action=paged-once&page=999999999");
        assertTrue(lead.page().text().contains("Page 3 of 3"));
    }

    /** Who has the file can check the chain without the product: the hashes are made again here from its columns alone. */
    @Test
    void theFileHoldsTheChain() throws IOException {
        Visitor lead = accounts.visitor(Role.LEAD);
        audit.record("exported on purpose", null, null, "=1+1");
        String csv = lead.openFile("/clinic/audit/export.csv");
        List<CSVRecord> rows = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get().parse(new StringReader(csv)).getRecords();
        String hash = AuditChain.START;
        for (CSVRecord row : rows) {
            String detail = row.get("detail").isEmpty() ? null : row.get("detail").replaceFirst("^'(?=[=+@-])", "");
            TrailEntry entry = new TrailEntry(Long.parseLong(row.get("id")), Instant.parse(row.get("happened_at")), number(row, "account_id"), row.get("who"), row.get("action"),
                    number(row, "patient_id"), number(row, "case_id"), detail, row.get("address").isEmpty() ? null : row.get("address"));
            assertEquals(row.get("hash"), AuditChain.hash(hash, Long.parseLong(row.get("sequence")), entry), "entry " + row.get("sequence"));
            hash = row.get("hash");
        }
        assertTrue(csv.contains("'=1+1"), "no spreadsheet runs it");
        JsonNode json = new ObjectMapper().readTree(lead.openFile("/clinic/audit/export.json?action=exported on"));
        assertFalse(json.get("cut").asBoolean());
        assertEquals("=1+1", json.get("entries").get(json.get("entries").size() - 1).get("detail").asText());
    }

    @Test
    void theCheckIsMadeOnThePage() {
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/audit");
        lead.submit("/clinic/audit/check", Map.of());
        assertTrue(lead.page().text().matches(".*Entries 1 to \\d+ are as they were sealed.*"), lead.page().text());
    }

    @Test
    void theRecordSaysWhoElseReadIt() {
        String family = "Readerly-" + System.nanoTime();
        long id = cases.open("Isolde", family);
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/cases/" + id + "/symptoms");
        String patient = lead.page().select("a[href^=/patients/]").attr("href").replaceAll("/patients/(\\d+).*", "$1");
        patient = patient.matches("\\d+") ? patient : lead.page().outerHtml().replaceAll("(?s).*?/patients/(\\d+).*", "$1");
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/patients/" + patient);
        assertTrue(clinician.page().select("[aria-labelledby=readers]").text().contains("T. Lead"), clinician.page().text());
        clinician.open("/patients/" + patient + "/readers");
        assertEquals(List.of("T. Clinician", "T. Lead"), clinician.page().select("tbody th").eachText());
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open("/patients/" + patient);
        assertEquals(0, assistant.page().select("[aria-labelledby=readers]").size());
    }

    private static Long number(CSVRecord row, String column) {
        return row.get(column).isEmpty() ? null : Long.valueOf(row.get(column));
    }
}
