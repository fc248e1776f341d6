package org.steadwork.exchange.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** A patient and ratings of pain from a file of another program, in the shapes in which such resources are published. */
@QuarkusTest
class IncomingTest {

    /** As clinics write it: use, several given names, lines of an address, pain with a moment and offset, as integer, taken back, and other things. */
    private static final String BUNDLE = """
            {"resourceType": "Bundle", "type": "collection", "entry": [
              {"fullUrl": "urn:uuid:8499029f-70ec-4919-88a9-938d8ad56397", "resource": {"resourceType": "Patient", "name": [
                 {"use": "nickname", "given": ["Bee"]}, {"use": "official", "family": "%s", "given": ["Beatrix", "Ann"]}], "gender": "female", "birthDate": "1984-07-09",
                 "telecom": [{"system": "phone", "value": "+49 30 000000", "use": "mobile"}, {"system": "email", "value": "bee@example.org"}],
                 "address": [{"line": ["7 Example Way", "Flat 2"], "postalCode": "EX1 1EX", "city": "Exampleton"}]}},
              {"resource": {"resourceType": "Observation", "status": "final", "category": [{"coding": [{"system": "http://terminology.hl7.org/CodeSystem/observation-category", "code": "vital-signs"}]}],
                 "code": {"coding": [{"system": "http://loinc.org", "code": "72514-3", "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported"}]},
                 "subject": {"reference": "urn:uuid:8499029f-70ec-4919-88a9-938d8ad56397"}, "effectiveDateTime": "2026-03-14T14:39:00-08:00",
                 "valueQuantity": {"value": 7, "unit": "{score}", "system": "http://unitsofmeasure.org", "code": "{score}"}, "bodySite": {"text": "Neck"}}},
              {"resource": {"resourceType": "Observation", "status": "final", "code": {"coding": [{"system": "http://loinc.org", "code": "72514-3"}]}, "effectiveDateTime": "2026-04-08", "valueInteger": 4}},
              {"resource": {"resourceType": "Observation", "status": "entered-in-error", "code": {"coding": [{"system": "http://loinc.org", "code": "72514-3"}]}, "effectiveDateTime": "2026-04-09", "valueInteger": 9}},
              {"resource": {"resourceType": "Observation", "status": "final", "code": {"coding": [{"system": "http://loinc.org", "code": "72514-3"}]}, "effectiveDateTime": "2026-04-10", "valueQuantity": {"value": 4.5}}},
              {"resource": {"resourceType": "Observation", "status": "final", "code": {"coding": [{"system": "http://loinc.org", "code": "8302-2", "display": "Body height"}]}, "valueQuantity": {"value": 170, "unit": "cm"}}},
              {"resource": {"resourceType": "Device"}}]}
            """;

    @Inject
    TestAccounts accounts;

    @Inject
    EntityManager db;

    private Visitor clinician;
    private String family;

    @BeforeEach
    void signIn() {
        clinician = accounts.visitor(Role.CLINICIAN);
        // of letters by chance, so that those of other tests do not look alike
        family = new Random().ints(14, 'a', 'z' + 1).mapToObj(Character::toString).collect(Collectors.joining("", "I", ""));
    }

    private void look(String file) {
        clinician.open("/patients/fhir");
        clinician.upload("/patients/fhir", Map.of(), "file", "in.json", file.getBytes(StandardCharsets.UTF_8));
    }

    private long count(String entity) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(*) from " + entity, Long.class).getSingleResult());
    }

    @Test
    void theFileIsShownBeforeAnythingIsStored() {
        long before = count("Patient");
        look(BUNDLE.formatted(family));
        assertEquals(200, clinician.status(), clinician.page().text());
        Map<String, String> shown = new LinkedHashMap<>();
        clinician.page().select("main input, main textarea").forEach(field -> shown.put(field.attr("name"), field.tagName().equals("textarea") ? field.wholeText() : field.val()));
        assertEquals("Beatrix Ann", shown.get("givenName"));
        assertEquals(family, shown.get("familyName"));
        assertEquals("9 Jul 1984", shown.get("birthDate").replace('\u00a0', ' '));
        assertEquals("+49 30 000000", shown.get("phone"));
        assertEquals("7 Example Way\nFlat 2\nEX1 1EX\nExampleton", shown.get("address").strip());
        assertEquals(2, clinician.page().select("input[name=take][checked]").size());
        String text = clinician.page().text();
        for (String left : List.of("sender took back", "without a whole number", "Body height", "1 other resource")) {
            assertTrue(text.contains(left), left + " in " + text);
        }
        assertEquals(before, count("Patient"));
    }

    @Test
    void whatIsConfirmedIsStoredWithItsCase() {
        look(BUNDLE.formatted(family));
        clinician.submit("/patients/fhir/store", Map.of());
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().text().contains("need a case"), clinician.page().text());
        clinician.submit("/patients/fhir/store", Map.of("complaint", "Neck ache, taken over"));
        assertEquals(200, clinician.status(), clinician.page().text());
        assertTrue(clinician.at().getPath().matches("/patients/\\d+"), clinician.at().toString());
        List<String> scores = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select concat(cast(s.scoredOn as string), ' ', cast(s.value as string)) from Score s"
                + " where s.caseFile.patient.familyName = ?1 and s.instrument = 'nprs_now' order by s.scoredOn", String.class).setParameter(1, family).getResultList());
        // the day is the clinic's own: 14:39 eight hours behind UTC is the evening of the same day in UTC
        assertEquals(List.of("2026-03-14 7.0", "2026-04-08 4.0"), scores);
    }

    @Test
    void somebodyKnownIsPointedOutAndMayTakeTheRatings() {
        look(BUNDLE.formatted(family));
        clinician.submit("/patients/fhir/store", Map.of("complaint", "Neck ache"));
        long patients = count("Patient");
        look(BUNDLE.formatted(family).replace("2026-03-14T14", "2026-03-15T14").replace("\"2026-04-08\"", "\"2026-04-20\""));
        assertTrue(clinician.page().text().contains("Somebody we know?"));
        clinician.submit("/patients/fhir/store", Map.of("complaint", "Neck ache"));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().text().contains("Say whether this is somebody we know"), clinician.page().text());
        String known = clinician.page().select("input[name=person]").first().val();
        clinician.submit("/patients/fhir/store", Map.of("person", known));
        assertEquals(200, clinician.status(), clinician.page().text());
        assertEquals(patients, count("Patient"));
        assertEquals(4, QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(*) from Score s where s.caseFile.patient.familyName = ?1", Long.class).setParameter(1, family)
                .getSingleResult()));
        look(BUNDLE.formatted(family));
        clinician.submit("/patients/fhir/store", Map.of("person", known));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().text().contains("in the case already"), clinician.page().text());
    }

    @Test
    void xmlIsReadToo() {
        look("<Patient xmlns=\"http://hl7.org/fhir\"><name><family value=\"" + family + "\"/><given value=\"Xenia\"/></name><birthDate value=\"1984-07\"/></Patient>");
        assertEquals(200, clinician.status(), clinician.page().text());
        assertEquals("Xenia", clinician.page().select("[name=givenName]").val());
        assertEquals("", clinician.page().select("[name=birthDate]").val(), "a month is not a day");
    }

    @Test
    void hostileFilesAreRefusedInWordsAndQuickly() {
        String deep = "{\"resourceType\":\"Patient\",\"extension\":" + "[{\"extension\":".repeat(20_000) + "[]" + "}]".repeat(20_000) + "}";
        String bomb = "<?xml version=\"1.0\"?><!DOCTYPE lolz [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><Patient xmlns=\"http://hl7.org/fhir\"><name><family value=\"&b;\"/></name></Patient>";
        String outside = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY f SYSTEM \"file:///etc/hostname\">]><Patient xmlns=\"http://hl7.org/fhir\"><name><family value=\"&f;\"/></name></Patient>";
        String deepXml = "<Patient xmlns=\"http://hl7.org/fhir\">" + "<extension url=\"x\">".repeat(20_000) + "</extension>".repeat(20_000) + "</Patient>";
        String two = "{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[{\"resource\":{\"resourceType\":\"Patient\"}},{\"resource\":{\"resourceType\":\"Patient\"}}]}";
        long began = System.nanoTime();
        for (String hostile : List.of("", "hello", "%PDF-1.7", "{", "{}", "[]", "{\"resourceType\":\"NoSuch\"}", "{\"resourceType\":\"Patient\",\"birthDate\":\"<script>alert(1)</script>\"}",
                "{\"resourceType\":\"Patient\",\"birthDate\":{\"a\":1}}", "{\"resourceType\":\"Patient\",\"resourceType\":\"Patient\"}", "{\"resourceType\":\"Patient\"} {}",
                "{\"resourceType\":\"Bundle\",\"type\":\"collection\"}", deep, deepXml, bomb, outside, two, "<html><body>no</body></html>", "<Patient>",
                "{\"resourceType\":\"Patient\",\"multipleBirthInteger\":" + "9".repeat(100_000) + "}")) {
            look(hostile);
            String start = hostile.substring(0, Math.min(60, hostile.length()));
            assertEquals(422, clinician.status(), start);
            String html = clinician.page().outerHtml();
            assertFalse(html.contains("<script>alert"), start);
            assertFalse(html.contains("org.steadwork") || html.contains("ca.uhn") || html.contains("java."), () -> start + ": " + clinician.page().select("[id$=-error]").text());
            assertFalse(clinician.page().select("[id=file-error]").text().isBlank(), start);
        }
        clinician.open("/patients/fhir");
        clinician.upload("/patients/fhir", Map.of(), "file", "in.json", new byte[IncomingPages.LARGEST_FILE + 1]);
        assertEquals(422, clinician.status());
        clinician.upload("/patients/fhir", Map.of(), "file", "in.json", "{\"resourceType\":\"Patient\",\"name\":[{\"family\":\"M\u00fc\"}]}".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(422, clinician.status());
        assertTrue(System.nanoTime() - began < 60_000_000_000L, "it took " + (System.nanoTime() - began) / 1_000_000_000 + " s");
    }

    /** What the hidden fields carry is not believed: forged ratings are left or refused. */
    @Test
    void forgedFieldsAreAnsweredInWords() {
        look(BUNDLE.formatted(family));
        String token = clinician.page().select("input[name=csrf-token]").val();
        for (String forged : List.of("x", "2026-03-14|11|", "2026-02-30|5|", "2099-01-01|5|", "|||||", "2026-03-14|-1|<img src=x>")) {
            clinician.post("/patients/fhir/store", Map.of("csrf-token", List.of(token), "givenName", List.of("A"), "familyName", List.of(family), "birthDate", List.of("no date"), "rating",
                    List.of(forged), "take", List.of("0"), "complaint", List.of("Ache")));
            assertEquals(422, clinician.status(), forged);
            assertFalse(clinician.page().outerHtml().contains("<img src=x"), forged);
        }
    }
}
