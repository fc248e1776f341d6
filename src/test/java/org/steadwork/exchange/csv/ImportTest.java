package org.steadwork.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.outcome.Scores;
import org.steadwork.web.Dates;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** Files taken in through the pages: the dry run, one transaction or nothing, and what is stored afterwards. */
@QuarkusTest
class ImportTest {

    private static final String HEAD = "given_name,family_name,birth_date,sex,hand_preferred,job,employer,site,department,hours_a_week,doctor,phone,email,address\n";

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    EntityManager db;

    @Inject
    CsvExports exports;

    @Inject
    Scores scores;

    private Visitor lead;
    private String mark;
    /** A birthday of its own for each test: names that differ by their mark alone are alike, and with one birthday would be taken for one person. */
    private LocalDate born;

    @BeforeEach
    void signIn() {
        lead = accounts.visitor(Role.LEAD);
        mark = Long.toString(System.nanoTime(), 36).replaceAll("\\d", "q");
        born = LocalDate.of(1930, 1, 1).plusDays(System.nanoTime() / 1_000 % 25_000);
    }

    /** Uploads a file and returns the address of its job. */
    private String upload(String kind, String text) {
        lead.open("/clinic/import");
        lead.upload("/clinic/import", Map.of("kind", kind), "file", "in.csv", text.getBytes(StandardCharsets.UTF_8));
        assertEquals(200, lead.status(), lead.page().text());
        awaitRest();
        return lead.at().getPath();
    }

    /** Looks again as the page itself would, until the work is done. */
    private void awaitRest() {
        String job = lead.at().getPath();
        for (int i = 0; i < 600 && !lead.page().select("meta[http-equiv=refresh]").isEmpty(); i++) {
            try {
                Thread.sleep(100);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            lead.open(job);
        }
    }

    private void store(String job, Map<String, String> choices) {
        lead.open(job);
        lead.submit(job + "/store", choices);
        awaitRest();
    }

    private long count(String family) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(*) from Patient where familyName like ?1", Long.class).setParameter(1, family + "%").getSingleResult());
    }

    @Test
    void aFileIsCheckedThenStoredWhole() {
        String job = upload("patients", HEAD + "Ada,Import" + mark + "," + born + ",female,right,Planner,Quay " + mark + ",North hall,Planning,37.5,Dr " + mark
                + ",'+44 1632 960123,ada@example.org,\"1 Row,\nTown\"\nBen,Import" + mark + ",2.4.1991,,,,,,,,,,,\n");
        assertTrue(lead.page().text().contains("Checked: nothing is wrong"), lead.page().text());
        assertEquals(0, count("Import" + mark));
        store(job, Map.of());
        assertTrue(lead.page().text().contains("2 of 2 rows were stored"), lead.page().text());
        assertEquals(2, count("Import" + mark));
        assertTrue(lead.open("/patients?q=Import" + mark).text().contains("Ada Import" + mark));
        assertNull(QuarkusTransaction.requiringNew().call(() -> db.createQuery("select j.content from ImportJob j order by j.id desc", String.class).setMaxResults(1).getResultList().get(0)));
    }

    /** The rows behind a patient taken in are, column by column, those of one registered by hand: the patient, its history, the grams that find it. */
    @Test
    void aPatientTakenInIsStoredLikeOneRegisteredByHand() {
        String job = upload("patients", HEAD + "Ada,Same" + mark + "," + born + ",female,right,Planner,Quay " + mark + ",North hall,Planning,37.5,Dr " + mark + ",01632,ada@example.org,1 Row\n");
        store(job, Map.of());
        lead.open("/patients/new");
        Map<String, String> byHand = new LinkedHashMap<>(Map.of("givenName", "Ada", "familyName", "Same" + mark, "birthDate", Dates.shown(born), "sex", "female", "handedness", "right", "jobTitle",
                "Planner", "employer", "Quay " + mark, "site", "North hall", "department", "Planning"));
        byHand.putAll(Map.of("hoursAWeek", "37.5", "doctor", "Dr " + mark, "phone", "01632", "email", "ada@example.org", "address", "1 Row"));
        lead.submit("/patients/new", byHand);
        assertTrue(lead.page().text().contains("This may be somebody we know"), "the double check does not see who was taken in");
        lead.submit("/patients/new", Map.of("anotherPerson", "yes"));
        assertEquals(200, lead.status());
        List<Object[]> both = rows("select * from patient where family_name = 'Same" + mark + "' order by id");
        assertEquals(2, both.size());
        // id, version and the file number are each patient's own
        assertEquals(from(both.get(0), 3), from(both.get(1), 3));
        assertEquals(both.get(0)[1], both.get(1)[1]);
        List<Object[]> histories = rows("select h.* from patient_history h join patient p on p.id = h.id where p.family_name = 'Same" + mark + "' order by h.id");
        assertEquals(2, histories.size());
        assertEquals(from(histories.get(0), 4), from(histories.get(1), 4));
        assertEquals(histories.get(0)[2], histories.get(1)[2]);
        assertEquals(List.of(accounts.of(Role.LEAD).displayName()), texts("select distinct r.author from revision r join patient_history h on h.revision = r.id join patient p on p.id = h.id"
                + " where p.family_name = 'Same" + mark + "'"));
        String words = "select w.beginning || ' ' || w.word from patient_word w where w.patient_id = %s order by w.word";
        assertEquals(texts(words.formatted(both.get(0)[0])), texts(words.formatted(both.get(1)[0])));
    }

    private static List<String> from(Object[] row, int first) {
        List<String> values = new ArrayList<>();
        for (int i = first; i < row.length; i++) {
            values.add(String.valueOf(row[i]));
        }
        return values;
    }

    @SuppressWarnings("unchecked")
    private List<Object[]> rows(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> db.createNativeQuery(sql).getResultList());
    }

    private List<String> texts(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> ((List<?>) db.createNativeQuery(sql).getResultList()).stream().map(String::valueOf).toList());
    }

    @Test
    void everyProblemIsListedByRowAndColumnAndNothingIsStored() {
        String job = upload("patients", HEAD + "Ada,Wrong" + mark + "," + born + ",,,,,,,,,,,\n,Wrong" + mark + ",31.2.1990,woman,,,,Hall,,101,,,no-at,\n");
        String text = lead.page().text();
        List<String> places = lead.page().select("tbody tr").eachText();
        assertTrue(text.contains("6 problems"), text);
        for (String place : List.of("3 given_name", "3 birth_date", "3 sex", "3 employer", "3 hours_a_week", "3 email")) {
            assertTrue(places.stream().anyMatch(row -> row.startsWith(place)), place + " of " + places);
        }
        assertTrue(lead.page().select("form[action$=/store]").isEmpty());
        lead.page().select("form[action$=/discard]").attr("action", job + "/store");
        lead.submit(job + "/store", Map.of());
        assertEquals(409, lead.status());
        assertEquals(0, count("Wrong" + mark));
        assertTrue(lead.open(job + "/problems.csv").text().contains("hours_a_week"));
    }

    @Test
    void whoIsHereAlreadyOrTwiceInTheFileIsLeftOutUnlessWanted() {
        String rows = HEAD + "Ada,Twice" + mark + "," + born + ",,,,,,,,,,,\nAda,Twice" + mark + "," + born + ",,,,,,,,,,,\nBea,Other" + mark + "," + born.plusDays(1) + ",,,,,,,,,,,\n";
        store(upload("patients", rows), Map.of());
        assertEquals(1, count("Twice" + mark));
        assertEquals(1, count("Other" + mark));
        String again = upload("patients", rows);
        assertTrue(lead.page().text().contains("3 are likely here already"), lead.page().text());
        store(again, Map.of("withDoubles", "yes"));
        assertEquals(3, count("Twice" + mark));
    }

    @Test
    void storingTwiceStoresOnce() {
        String job = upload("patients", HEAD + "Ada,Once" + mark + "," + born + ",,,,,,,,,,,\n");
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(job);
        store(job, Map.of());
        other.submit(job + "/store", Map.of());
        assertEquals(409, other.status());
        assertEquals(1, count("Once" + mark));
    }

    @Test
    void whatIsNoTableIsRefusedInWords() {
        lead.open("/clinic/import");
        lead.upload("/clinic/import", Map.of("kind", "patients"), "file", "in.csv", "M\u00fcller".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(422, lead.status());
        assertTrue(lead.page().text().contains("not in UTF-8"));
        lead.upload("/clinic/import", Map.of("kind", "no_such"), "file", "in.csv", "x".getBytes(StandardCharsets.UTF_8));
        assertEquals(422, lead.status());
        upload("patients", "given_name,surname\nAda,Q\n");
        assertTrue(lead.page().text().contains("\u201csurname\u201d is not a column"), lead.page().text());
        upload("patients", HEAD + "Ada,Q,1990-04-02,,,,,,,,,,,,,,,surplus\n");
        assertTrue(lead.page().text().contains("more cells than the header"), lead.page().text());
    }

    /** The progress moves while nothing is stored yet, and a discarded file is forgotten. */
    @Test
    void manyRowsShowTheirProgressAndCanBeDiscarded() {
        StringBuilder many = new StringBuilder(HEAD);
        for (int i = 0; i < 6000; i++) {
            many.append("G").append(i).append(",Many").append(mark).append(',').append(1950 + i % 50).append("-0").append(1 + i % 9).append("-1").append(i % 9).append(",,,,,,,,,,,\n");
        }
        String job = upload("patients", many.toString());
        assertTrue(lead.page().text().contains("6000 rows of patients"), lead.page().text());
        int done = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select j.rowsDone from ImportJob j order by j.id desc", Integer.class).setMaxResults(1).getResultList().get(0));
        assertEquals(6000, done);
        lead.submit(job + "/discard", Map.of());
        assertTrue(lead.open(job).text().contains("Discarded"));
        assertEquals(0, count("Many" + mark));
    }

    @Test
    void patientsComeBackFromAnExport() {
        store(upload("patients", HEAD + "'=Ada,Round" + mark + "," + born + ",female,left,\"Planner, \"\"night\"\"\",Quay " + mark + ",North,Plan,37.5,Dr " + mark
                + ",'+44 1632,ada@example.org,\"1 Row\nTown\"\n"), Map.of());
        String exported = new String(QuarkusTransaction.requiringNew().call(() -> exports.patients(false)), StandardCharsets.UTF_8);
        String[] lines = exported.split("\r\n");
        String row = Arrays.stream(lines).filter(line -> line.contains("Round" + mark)).findFirst().orElseThrow();
        assertTrue(row.contains(",'=Ada,") && row.contains("'+44 1632"), row);
        String job = upload("patients", lines[0] + "\r\n" + row.replace("Round" + mark, "Back" + mark) + "\r\n");
        store(job, Map.of("withDoubles", "yes"));
        String again = new String(QuarkusTransaction.requiringNew().call(() -> exports.patients(false)), StandardCharsets.UTF_8);
        String back = Arrays.stream(again.split("\r\n")).filter(line -> line.contains("Back" + mark)).findFirst().orElseThrow();
        assertEquals(row.substring(row.indexOf(',')).replace("Round", "Back"), back.substring(back.indexOf(',')));
    }

    @Test
    void employersWithSitesAndContactsComeBackFromAnExport() {
        String rows = "employer,letters_to,address,phone,email,site,site_address,contact,contact_role,contact_phone,contact_email\nQuay " + mark + ",Jo,2 Quay,01632,o@example.org,North,3 Quay,,,,\nQuay "
                + mark + ",,,,,South,,Sam,Lead,'+44,s@example.org\n";
        store(upload("employers", rows), Map.of());
        String exported = new String(QuarkusTransaction.requiringNew().call(() -> exports.employers(true)), StandardCharsets.UTF_8);
        List<String> mine = exported.lines().filter(line -> line.contains("Quay " + mark)).toList();
        assertEquals(3, mine.size(), mine.toString());
        store(upload("employers", exported), Map.of());
        assertTrue(lead.page().text().contains("0 of"), lead.page().text());
        assertEquals(exported, new String(QuarkusTransaction.requiringNew().call(() -> exports.employers(true)), StandardCharsets.UTF_8));
    }

    /** Source of the scores: the worked examples of the neck index, 19 of 50 as 38 % and 16 of 45 as 35.56 %. */
    @Test
    void scoresAreWorkedOutHereAndComeBackFromAnExport() {
        long file = cases.open("Sora", "Scored" + mark);
        String number = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.patient.fileNumber from CaseFile c where c.id = ?1", String.class).setParameter(1, file).getSingleResult());
        String head = "file_number,case,instrument,version,scored_on,answers,value\n";
        upload("scores", head + number + ",,ndi,,2026-03-05,2 1 3 2 2 1 2 3 2 1,39\n" + number + ",,ndi,,2026-03-01,2 1 3,\nSW-none,,no_such,,5.3.2026,x,\n" + number + ",9,ndi,,2026-03-05,2 1 3 2 2 1 2 3 2 9,\n");
        List<String> places = lead.page().select("tbody tr").eachText();
        for (String place : List.of("2 value", "3 scored_on", "3 answers", "4 file_number", "4 instrument", "4 answers", "5 case")) {
            assertTrue(places.stream().anyMatch(row -> row.startsWith(place)), place + " of " + places);
        }
        store(upload("scores", head + number + ",,ndi,,2026-03-05,2 1 3 2 2 1 2 3 2 1,38\n" + number + ",,ndi,,2026-03-12,2 1 2 2 2 1 2 _ 3 1,35.56\n"), Map.of());
        assertTrue(lead.page().text().contains("2 of 2 rows were stored"), lead.page().text());
        List<Double> stored = QuarkusTransaction.requiringNew().call(() -> scores.of(file).stream().map(score -> score.value()).sorted().toList());
        assertEquals(35.56, stored.get(0), 0.005);
        assertEquals(38.0, stored.get(1), 1e-9);
        String exported = new String(QuarkusTransaction.requiringNew().call(() -> exports.scores(false)), StandardCharsets.UTF_8);
        List<String> mine = exported.lines().filter(line -> line.startsWith(number + ",")).toList();
        assertEquals(2, mine.size());
        upload("scores", exported.lines().findFirst().orElseThrow() + "\n" + String.join("\n", mine));
        assertTrue(lead.page().text().contains("has a score on") && lead.page().text().contains("2 problems"), lead.page().text());
        long other = cases.open("Sora", "Second" + mark);
        String second = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.patient.fileNumber from CaseFile c where c.id = ?1", String.class).setParameter(1, other).getSingleResult());
        store(upload("scores", exported.lines().findFirst().orElseThrow() + "\n" + String.join("\n", mine).replace(number + "," + file, second + "," + other)), Map.of());
        assertEquals(stored, QuarkusTransaction.requiringNew().call(() -> scores.of(other).stream().map(score -> score.value()).sorted().toList()));
    }

    @Test
    void everyTemplateIsAFileThatCanBeTakenIn() {
        for (String kind : List.of("patients", "employers")) {
            lead.open("/clinic/import/template-" + kind + ".csv");
            upload(kind, lead.answer().asString());
            assertTrue(lead.page().text().contains("nothing is wrong"), kind + ": " + lead.page().text());
            assertFalse(lead.page().text().contains("problem"), kind);
        }
    }
}
