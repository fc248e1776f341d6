package org.steadwork.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.steadwork.account.Account;
import org.steadwork.body.BodyChart;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.exchange.fhir.CaseBundles;
import org.steadwork.exchange.fhir.CaseRecord;
import org.steadwork.exchange.fhir.CaseRecords;
import org.steadwork.exchange.fhir.FhirFormat;
import org.steadwork.exchange.fhir.Portion;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.letter.CaseCorrespondence;
import org.steadwork.letter.CaseCorrespondence.SignedCopy;
import org.steadwork.outcome.Instruments;
import org.steadwork.web.Dates;

/**
 * The copy of a patient's record that the patient takes along: for each case a PDF to read, the same as JSON and as FHIR R4 for programs, and
 * every signed letter as it was signed. It holds everything about the worker and is for nobody else.
 */
@ApplicationScoped
public class RecordCopies {

    private static final String READ_ME = """
            Copy of the record of %s, made on %s.

            Each folder is one case:
              record.pdf        to read and to print
              record.json       the same for programs, in plain words
              fhir-bundle.json  the same as HL7 FHIR R4, for other clinics' programs
              letters           every letter as it was signed

            It holds health information. Keep it where others cannot read it.
            What is unknown or was not asked is written as that; it is not a no.
            """;

    @Inject
    CaseFiles cases;

    @Inject
    CaseRecords records;

    @Inject
    CaseBundles bundles;

    @Inject
    FhirFormat format;

    @Inject
    CaseCorrespondence letters;

    @Inject
    BodyChart chart;

    @Inject
    Instruments instruments;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    RecordExtras extras;

    @Inject
    Clock clock;

    private final ObjectMapper json = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    /**
     * Writes the copy of one patient with all cases as a ZIP; call within a transaction, and note in the audit trail what it was for.
     *
     * @param by under whose name the PDF is printed
     */
    public void write(long patientId, Account by, OutputStream to) throws IOException {
        List<CaseFile> all = cases.ofPatient(patientId);
        try (ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8)) {
            for (int i = 0; i < all.size(); i++) {
                CaseFile file = cases.withPeople(all.get(i).id()).orElseThrow();
                if (i == 0) {
                    put(zip, "read-me.txt", READ_ME.formatted(file.patient().name(), Dates.shown(LocalDate.now(clock))).getBytes(StandardCharsets.UTF_8));
                }
                write(file, by, zip, "case-" + (all.size() - i) + "-opened-" + file.openedOn() + "/");
            }
        }
    }

    private void write(CaseFile file, Account by, ZipOutputStream zip, String folder) throws IOException {
        CaseRecord record = records.of(file);
        Portion own = Portion.own(letters.matrix(), file.patient().name(), LocalDate.now(clock));
        put(zip, folder + "record.pdf", letters.copyOfTheRecord(file, by));
        put(zip, folder + "record.json", json(record));
        put(zip, folder + "fhir-bundle.json", format.json(bundles.of(record, own)).getBytes(StandardCharsets.UTF_8));
        for (SignedCopy letter : record.letters()) {
            put(zip, folder + "letters/letter-" + letter.reference().replace('/', '-') + ".pdf", letter.pdf());
        }
    }

    private byte[] json(CaseRecord record) {
        try {
            Map<String, Object> document = new CaseDocument(chart, instruments, catalogue).of(record);
            extras.add(document, record.file());
            return json.writeValueAsBytes(document);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A record of texts, numbers and lists can be written as JSON", e);
        }
    }

    private void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(Instant.now(clock).toEpochMilli());
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
