package org.steadwork.retention;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.backup.RowByRow;
import org.steadwork.web.FullCase;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Everything about one person goes out in one file, and goes for good: no name, note, picture or letter is left, and nobody else loses a row. */
@QuarkusTest
class RemovalTest {

    private static final Set<String> STAY = Set.of("audit_event", "revision", "sign_in_session", "backup_run");

    @Inject
    FullCase cases;

    @Inject
    TestAccounts accounts;

    @Inject
    AgroalDataSource source;

    @Inject
    Clock clock;

    private Visitor lead;
    private FullCase.Made made;
    private String family;
    private String fileNumber;

    @BeforeEach
    void aPersonWithSomethingInEveryTable() {
        // of letters by chance, so that the people of other tests do not look alike
        family = new Random().ints(14, 'a', 'z' + 1).mapToObj(Character::toString).collect(Collectors.joining("", "R", ""));
        made = cases.make("Quintessa", family);
        lead = accounts.visitor(Role.LEAD);
        fileNumber = lead.open("/patients/" + made.patient()).select(".head__ask").text();
    }

    @Test
    void nothingOfTheRemovedPersonIsLeftAndNobodyElseLosesARow() throws Exception {
        FullCase.Made other = cases.make("Ottoline", "Staywell-" + made.patient());
        Map<String, Integer> others = counts(other.patient());
        lead.open("/clinic/import");
        lead.upload("/clinic/import", Map.of("kind", "patients"), "file", "patients.csv",
                ("given_name,family_name,birth_date\nQuintessa," + family + ",1988-05-03\n").getBytes(StandardCharsets.UTF_8));
        assertEquals(200, lead.status(), lead.page().text());
        Map<String, List<String>> before = rows();
        assertTrue(holding(before, family).contains("import_job"), "the uploaded file names nobody");
        Map<String, Integer> own = counts(made.patient());
        assertTrue(own.size() > 60, () -> "the person has rows in only " + own.keySet());
        assertTrue(own.keySet().containsAll(List.of("patient", "patient_word", "patient_history", "case_file_history", "signed_letter", "workplace_photo_image", "visit_note",
                "own_report", "region_symptom_history", "legal_hold")), () -> own.keySet().toString());
        assertFalse(holding(before, family).isEmpty());
        close();
        lift();
        remove(Map.of("ground", "asked", "fileNumber", fileNumber, "password", TestAccounts.PASSWORD));
        assertEquals(200, lead.status(), lead.page().text());
        Map<String, List<String>> after = rows();
        assertEquals(Set.of(), holding(after, family));
        assertEquals(Set.of(), holding(after, family.toLowerCase()));
        assertEquals(Set.of(), holding(after, "file_number=" + fileNumber));
        assertEquals(List.of(), pointingAt(after, "case_file_id=" + made.caseId()));
        assertEquals(List.of(), pointingAt(after, "patient_id=" + made.patient()));
        assertEquals(others, counts(other.patient()), "another person lost rows");
        for (String table : before.keySet()) {
            int gone = before.get(table).size() - after.get(table).size();
            assertTrue(STAY.contains(table) || gone <= own.getOrDefault(table, 0) + 1, table + " lost " + gone + " rows, " + own.get(table) + " were the person's");
        }
        assertEquals(404, visited("/patients/" + made.patient()));
        assertEquals(404, visited(made.path()));
        String clinic = lead.open("/clinic/retention").text();
        assertTrue(clinic.contains("patient " + made.patient()), clinic);
    }

    @Test
    void theAuditTrailAndTheStatisticsStayAndNameNobody() throws Exception {
        close();
        lift();
        List<String> before = rows().get("audit_event").stream().filter(row -> row.matches("(?s).*\\bpatient_id=" + made.patient() + "\\b.*")).toList();
        remove(Map.of("ground", "registered_wrongly", "fileNumber", fileNumber, "password", TestAccounts.PASSWORD));
        assertEquals(200, lead.status(), lead.page().text());
        List<String> after = rows().get("audit_event");
        assertEquals(List.of(), before.stream().filter(row -> !after.contains(row)).toList(), "the trail lost entries");
        assertTrue(before.size() > 20, () -> "only " + before.size() + " entries to lose");
        assertTrue(after.stream().noneMatch(row -> row.contains("Quintessa") || row.contains(family)), "the trail names the person");
        List<String> tally = rows().get("removed_case_tally");
        assertTrue(tally.stream().anyMatch(row -> row.contains("year_opened=2026") && row.contains("ending=GOALS_MET")), tally::toString);
    }

    @Test
    void anOpenOrHeldCaseAWrongNumberAndAWrongPasswordStandInTheWay() throws Exception {
        Map<String, Integer> all = counts(made.patient());
        Map<String, String> right = Map.of("ground", "asked", "fileNumber", fileNumber, "password", TestAccounts.PASSWORD);
        refused(right, "A case is open");
        close();
        refused(right, "A case is held");
        lift();
        lead.open("/clinic/retention/" + made.patient());
        for (Map.Entry<String, String> wrong : Map.of("fileNumber", "SW-0", "password", "not the password at all", "ground", "period_over").entrySet()) {
            Map<String, String> values = new LinkedHashMap<>(right);
            values.put(wrong.getKey(), wrong.getValue());
            remove(values);
            assertEquals(422, lead.status(), wrong.getKey());
            assertFalse(lead.page().outerHtml().contains(TestAccounts.PASSWORD), "the password comes back");
        }
        assertEquals(all.keySet(), counts(made.patient()).keySet());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/clinic/retention/" + made.patient());
        assertEquals(403, clinician.status());
    }

    @Test
    void thoseLongGoneAreListedUnlessTheyAreOpenOrTooYoung() throws Exception {
        LocalDate today = LocalDate.now(clock);
        long gone = old("Longgone", today.minusYears(11), today.minusYears(60), today.minusYears(11).plusDays(30));
        long open = old("Stillopen", today.minusYears(11), today.minusYears(60), null);
        long young = old("Tooyoung", today.minusYears(11), today.minusYears(24), today.minusYears(11).plusDays(30));
        long recent = old("Recently", today.minusYears(11), today.minusYears(60), today.minusYears(9));
        String list = lead.open("/clinic/retention").select("[aria-labelledby=due]").outerHtml();
        assertTrue(list.contains("/clinic/retention/" + gone + "\""), list);
        for (long not : List.of(open, young, recent)) {
            assertFalse(list.contains("/clinic/retention/" + not + "\""), list);
        }
        lead.open("/clinic/retention/" + gone);
        String number = lead.page().select(".head__ask").text().replaceAll(".* ", "");
        lead.submit("/clinic/retention/" + gone + "/remove", Map.of("ground", "period_over", "fileNumber", number, "password", TestAccounts.PASSWORD));
        assertEquals(200, lead.status(), lead.page().text());
        assertFalse(lead.page().text().contains("Longgone"));
    }

    @Test
    void theExportHoldsRecordRowsLettersAndPictures() throws Exception {
        long begun = System.nanoTime();
        lead.open("/patients/" + made.patient() + "/export/person.zip");
        assertEquals(200, lead.status());
        assertTrue((System.nanoTime() - begun) / 1e9 < 60, "within a minute");
        Map<String, byte[]> files = unzip(lead.answer().asByteArray());
        JsonNode rows = new ObjectMapper().readTree(files.get("rows.json"));
        Map<String, Integer> counted = counts(made.patient());
        Map<String, Integer> exported = new TreeMap<>();
        rows.properties().forEach(table -> exported.put(table.getKey(), table.getValue().size()));
        assertEquals(new TreeMap<>(counted), exported);
        assertEquals(family, rows.at("/patient/0/family_name").asText());
        assertFalse(rows.toString().matches(".*token_hash\":\"[0-9a-f]{64}.*"), "a link's hash is in it");
        try (PDDocument pdf = Loader.loadPDF(files.get("record-case-" + made.caseId() + ".pdf"))) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("Quintessa " + family) && text.contains("Neck ache") && text.contains("Better."), text);
        }
        byte[] letter = files.entrySet().stream().filter(file -> file.getKey().startsWith("files/signed-letter")).findFirst().orElseThrow().getValue();
        lead.open(made.path() + "/letters/1/file/letter.pdf");
        assertTrue(Arrays.equals(letter, lead.answer().asByteArray()), "the letter is the one that was signed");
        assertEquals(2, files.keySet().stream().filter(name -> name.endsWith(".jpg")).count());
        assertEquals(403, statusOf(accounts.visitor(Role.ASSISTANT), "/patients/" + made.patient() + "/export/person.zip"));
    }

    private static int statusOf(Visitor visitor, String path) {
        visitor.open(path);
        return visitor.status();
    }

    private static Map<String, byte[]> unzip(byte[] zip) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private long old(String name, LocalDate registered, LocalDate born, LocalDate closed) throws SQLException {
        try (Connection db = source.getConnection(); Statement sql = db.createStatement()) {
            long id = 800_000_000L + System.nanoTime() % 100_000_000L;
            sql.execute("insert into patient (id, version, file_number, given_name, family_name, search_name, birth_date, sex, handedness, registered_on) values (" + id
                    + ", 0, 'OLD-" + id + "', 'Invented', '" + name + "', '" + name.toLowerCase() + "', date '" + born + "', 'FEMALE', 'RIGHT', date '" + registered + "')");
            long clinician = accounts.of(Role.CLINICIAN).id();
            sql.execute("insert into case_file (id, version, patient_id, clinician_id, complaint, opened_on, closed_on, close_reason) values (" + id + ", 0, " + id + ", "
                    + clinician + ", 'Neck', date '" + registered + "', " + (closed == null ? "null, null" : "date '" + closed + "', 'GOALS_MET'") + ")");
            return id;
        }
    }

    /** Past the page, which holds a case with an open flag or a booked visit back: what is tested here is what comes years after. */
    private void close() throws SQLException {
        try (Connection db = source.getConnection(); Statement sql = db.createStatement()) {
            sql.executeUpdate("update case_file set closed_on = date '" + LocalDate.now(clock) + "', close_reason = 'GOALS_MET', next_review_on = null, version = version + 1 where id = "
                    + made.caseId());
        }
    }

    private void lift() {
        lead.open("/clinic/retention/" + made.patient());
        lead.submit("/clinic/retention/" + made.patient() + "/holds/" + made.parts().get("hold") + "/lift", Map.of());
        assertEquals(200, lead.status(), lead.page().text());
    }

    private void remove(Map<String, String> values) {
        lead.open("/clinic/retention/" + made.patient());
        lead.submit("/clinic/retention/" + made.patient() + "/remove", values);
    }

    /** Sends what the page does not offer while something stands in the way. */
    private void refused(Map<String, String> values, String words) {
        lead.open("/clinic/retention/" + made.patient());
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("csrf-token", List.of(lead.page().select("input[name=csrf-token]").val()));
        values.forEach((name, value) -> all.put(name, List.of(value)));
        lead.post("/clinic/retention/" + made.patient() + "/remove", all);
        assertEquals(422, lead.status());
        assertTrue(lead.page().text().contains(words), lead.page().text());
    }

    private int visited(String path) {
        lead.open(path);
        return lead.status();
    }

    private Map<String, Integer> counts(String patient) throws SQLException {
        try (Connection db = source.getConnection()) {
            return PersonRows.of(db, Long.parseLong(patient)).count();
        }
    }

    private Map<String, List<String>> rows() throws SQLException {
        try (Connection db = source.getConnection()) {
            return RowByRow.of(db);
        }
    }

    private static Set<String> holding(Map<String, List<String>> rows, String words) {
        return rows.entrySet().stream().filter(table -> table.getValue().stream().anyMatch(row -> row.contains(words))).map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> pointingAt(Map<String, List<String>> rows, String reference) {
        return rows.entrySet().stream().filter(table -> !table.getKey().equals("audit_event"))
                .filter(table -> table.getValue().stream().anyMatch(row -> row.matches("(?s).*\\b" + reference + "[,\\]].*"))).map(Map.Entry::getKey).toList();
    }
}
