package org.steadwork.exchange.fhir;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hl7.fhir.r4.model.Attachment;
import org.hl7.fhir.r4.model.Base;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Coding;
import org.hl7.fhir.r4.model.DocumentReference;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Property;
import org.hl7.fhir.r4.model.Resource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.demo.OnH2;
import org.steadwork.exchange.ClinicMarks;
import org.steadwork.kernel.Answer;
import org.steadwork.letter.CaseCorrespondence.ConsentGiven;
import org.steadwork.letter.CaseCorrespondence;
import org.steadwork.letter.disclosure.Recipient;

/** Every invented case as a bundle, held against HL7's validator and against the record it was made of. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(OnH2.class)
class CaseBundleTest {

    private static final LocalDate TODAY = LocalDate.of(2030, 12, 16);

    @Inject
    CaseFiles cases;

    @Inject
    CaseRecords records;

    @Inject
    CaseBundles bundles;

    @Inject
    CaseCorrespondence letters;

    @Inject
    FhirFormat format;

    /** A bundle with the record it was made of. */
    record Made(CaseRecord record, Portion portion, Bundle bundle) {

        <T extends Resource> List<T> all(Class<T> type) {
            return bundle.getEntry().stream().map(Bundle.BundleEntryComponent::getResource).filter(type::isInstance).map(type::cast).toList();
        }
    }

    private List<Made> own() {
        return QuarkusTransaction.requiringNew().call(() -> ids().stream().map(this::record)
                .map(record -> made(record, Portion.own(letters.matrix(), record.file().patient().name(), TODAY))).toList());
    }

    private List<Made> byConsent() {
        return QuarkusTransaction.requiringNew().call(() -> ids().stream().map(this::record).flatMap(record -> record.consents().stream().filter(ConsentGiven::inForce)
                .map(given -> made(record, Portion.of(given, letters.matrix())))).toList());
    }

    private List<Long> ids() {
        return cases.listAll().stream().map(CaseFile::id).sorted().toList();
    }

    private CaseRecord record(long id) {
        return records.of(cases.withPeople(id).orElseThrow());
    }

    private Made made(CaseRecord record, Portion portion) {
        return new Made(record, portion, bundles.of(record, portion));
    }

    @Test
    void everyBundlePassesHl7sValidator() {
        Hl7Validator validator = new Hl7Validator();
        Map<String, String> wrong = new TreeMap<>();
        List<Made> all = new ArrayList<>(own());
        assertEquals(12, all.size());
        all.addAll(byConsent());
        assertTrue(all.size() > 12, "no consent in force in the demo");
        for (Made made : all) {
            validator.wrongIn(format.json(made.bundle())).forEach(one -> wrong.putIfAbsent(one.replaceAll(" at Bundle.*", ""),
                    made.record().file().patient().name() + " for " + made.portion().name() + ": " + one));
        }
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " kinds of wrong:\n" + String.join("\n", wrong.values()));
    }

    /** The validator must be able to fail: a bundle with one thing broken each is refused by it. */
    @Test
    void theValidatorRefusesWhatIsBroken() {
        Hl7Validator validator = new Hl7Validator();
        String json = format.json(own().get(0).bundle());
        assertTrue(validator.wrongIn(json).isEmpty());
        for (Map.Entry<String, String> broken : Map.of("\"collection\"", "\"pile\"", "\"{score}\"", "\"points/\"", "\"birthDate\": \"", "\"birthDate\": \"x", "\"valueInteger\": 2",
                "\"valueInteger\": 999").entrySet()) {
            assertTrue(json.contains(broken.getKey()), broken.getKey());
            assertFalse(validator.wrongIn(json.replace(broken.getKey(), broken.getValue())).isEmpty(), broken.getKey());
        }
    }

    @Test
    void thereIsEveryKindOfResource() {
        Set<String> kinds = own().stream().flatMap(made -> made.all(Resource.class).stream()).map(Resource::fhirType).collect(Collectors.toSet());
        Set<String> wanted = Set.of("Patient", "Practitioner", "Organization", "EpisodeOfCare", "Encounter", "Observation", "QuestionnaireResponse", "Questionnaire", "CarePlan",
                "ServiceRequest", "Consent", "DocumentReference", "Provenance", "Flag", "Goal");
        assertTrue(kinds.containsAll(wanted), () -> "missing of " + wanted + ": " + kinds);
    }

    /** Codes of a terminology go out only where they were looked up; HL7's own lists are part of FHIR. */
    @Test
    void noOtherCodeOfLoincAndNoneOfAnotherTerminologyGoesOut() {
        for (Made made : own()) {
            codings(made.bundle()).forEach(coding -> assertTrue(coding.getSystem().startsWith("http://terminology.hl7.org/") || coding.getSystem().startsWith("urn:iso-astm:")
                    || coding.getSystem().equals(Codes.LOINC) && Set.of("72514-3", "97909-6").contains(coding.getCode()), () -> coding.getSystem() + " " + coding.getCode()));
        }
    }

    private static List<Coding> codings(Base element) {
        List<Coding> found = new ArrayList<>();
        for (Property property : element.children()) {
            for (Base value : property.getValues()) {
                if (value instanceof Coding coding) {
                    found.add(coding);
                }
                found.addAll(codings(value));
            }
        }
        return found;
    }

    @Test
    void painGoesOutAsItWasSaid() {
        for (Made made : own()) {
            List<String> said = Stream.concat(made.record().reports().stream().flatMap(report -> report.readings().stream().filter(reading -> reading.now() != null)
                    .map(reading -> report.reportedOn() + " " + reading.now())), made.record().scores().stream().filter(score -> score.instrument().equals("nprs_now"))
                    .map(score -> score.scoredOn() + " " + score.value().intValue())).sorted().toList();
            List<String> written = made.all(Observation.class).stream().filter(one -> hasCode(one.getCode(), Codes.PAIN_NOW))
                    .map(one -> one.getEffectiveDateTimeType().getValueAsString() + " " + one.getValueQuantity().getValue().intValueExact()).sorted().toList();
            assertEquals(said, written);
            made.all(Observation.class).stream().filter(one -> hasCode(one.getCode(), Codes.PAIN_NOW))
                    .forEach(one -> assertEquals("http://unitsofmeasure.org {score}", one.getValueQuantity().getSystem() + " " + one.getValueQuantity().getCode()));
        }
    }

    private static boolean hasCode(CodeableConcept concept, String code) {
        return concept.getCoding().stream().anyMatch(coding -> coding.getCode().equals(code));
    }

    @Test
    void whatIsUnknownOrWasNotAskedIsNeverANo() {
        long open = 0;
        for (Made made : own()) {
            Map<String, Observation> byWords = made.bundle().getEntry().stream().filter(entry -> entry.getResource() instanceof Observation)
                    .collect(Collectors.toMap(Bundle.BundleEntryComponent::getFullUrl, entry -> (Observation) entry.getResource()));
            BundleDraft addresses = new BundleDraft(mark(), true, "any", Instant.EPOCH);
            for (var screen : made.record().screens()) {
                for (var answer : screen.answers()) {
                    Observation written = byWords.get(addresses.address("red flag answer " + screen.id() + " " + answer.key()));
                    boolean known = answer.answer() == Answer.YES || answer.answer() == Answer.NO;
                    assertEquals(known, written.hasValue(), answer.prompt());
                    if (known) {
                        assertEquals(answer.answer() == Answer.YES, written.getValueBooleanType().booleanValue(), answer.prompt());
                    } else {
                        open++;
                        assertEquals(answer.declined() ? "asked-declined" : answer.answer() == Answer.UNKNOWN ? "asked-unknown" : "not-asked",
                                written.getDataAbsentReason().getCodingFirstRep().getCode(), answer.prompt());
                    }
                }
            }
        }
        assertTrue(open > 5, "no open answer in the demo: nothing was tested");
    }

    @Inject
    ClinicMarks marks;

    private String mark() {
        return marks.mark();
    }

    /** SHA-1 as FHIR asks, worked out here by the JDK's own command of the algorithm, and the PDF byte by byte. */
    @Test
    void theSignedFilesGoAlongWholeWithTheirHash() throws NoSuchAlgorithmException {
        int files = 0;
        for (Made made : own()) {
            List<byte[]> signed = made.record().letters().stream().map(CaseCorrespondence.SignedCopy::pdf).toList();
            List<Attachment> attached = made.all(DocumentReference.class).stream().map(one -> one.getContentFirstRep().getAttachment())
                    .filter(one -> one.getContentType().equals("application/pdf")).toList();
            assertEquals(signed.size(), attached.size());
            for (int i = 0; i < signed.size(); i++) {
                assertArrayEquals(signed.get(i), attached.get(i).getData());
                assertArrayEquals(MessageDigest.getInstance("SHA-1").digest(signed.get(i)), attached.get(i).getHash());
                assertEquals("%PDF", new String(attached.get(i).getData(), 0, 4, StandardCharsets.US_ASCII));
                files++;
            }
        }
        assertTrue(files > 3, "only " + files);
    }

    /** The table of disclosure: to an employer never pain, scores, red flags or exercises; to others never how to reach the worker, and only their own letters. */
    @Test
    void anotherReaderGetsNoMoreThanTheTableAllows() {
        List<Made> all = byConsent();
        assertTrue(all.stream().anyMatch(made -> made.portion().reader().kind() == Recipient.EMPLOYER));
        for (Made made : all) {
            String json = format.json(made.bundle());
            org.hl7.fhir.r4.model.Patient patient = made.all(org.hl7.fhir.r4.model.Patient.class).get(0);
            assertTrue(patient.getTelecom().isEmpty() && patient.getAddress().isEmpty() && patient.getGeneralPractitioner().isEmpty());
            long letters = made.record().letters().stream().filter(letter -> letter.readerKey().equals(made.portion().readerKey())).count();
            assertEquals(letters, made.all(DocumentReference.class).size());
            if (made.portion().reader().kind() == Recipient.EMPLOYER) {
                assertFalse(json.contains("72514-3") || json.contains("QuestionnaireResponse") || json.contains("Red flag") || json.contains("Home exercise programme"), json);
                assertTrue(made.all(org.hl7.fhir.r4.model.Flag.class).isEmpty());
            }
        }
    }

    @Test
    void everyReferenceLeadsIntoTheBundle() {
        for (Made made : own()) {
            Set<String> there = made.bundle().getEntry().stream().map(Bundle.BundleEntryComponent::getFullUrl).collect(Collectors.toSet());
            assertEquals(made.bundle().getEntry().size(), there.size());
            Matcher references = Pattern.compile("\"reference\": \"([^\"]+)\"").matcher(format.json(made.bundle()));
            while (references.find()) {
                assertTrue(there.contains(references.group(1)), references.group(1));
            }
        }
    }

    @Test
    void theSameCaseHasTheSameAddressesAgain() {
        Comparator<Made> byName = Comparator.comparing(made -> made.portion().name());
        List<String> once = own().stream().sorted(byName).flatMap(made -> made.bundle().getEntry().stream()).map(Bundle.BundleEntryComponent::getFullUrl).toList();
        List<String> again = own().stream().sorted(byName).flatMap(made -> made.bundle().getEntry().stream()).map(Bundle.BundleEntryComponent::getFullUrl).toList();
        assertEquals(once, again);
    }
}
