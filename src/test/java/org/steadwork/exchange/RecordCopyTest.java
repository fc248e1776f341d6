package org.steadwork.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.demo.OnH2;
import org.steadwork.exchange.fhir.CaseRecord;
import org.steadwork.exchange.fhir.CaseRecords;
import org.steadwork.letter.CaseCorrespondence.SignedCopy;

/** The copy of the record of every demo patient, opened and held against the record. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(OnH2.class)
class RecordCopyTest {

    @Inject
    CaseFiles cases;

    @Inject
    CaseRecords records;

    @Inject
    RecordCopies copies;

    private final ObjectMapper json = new ObjectMapper();

    private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void everyPatientGetsEverythingOnceAndWhole() throws IOException {
        List<Long> ids = QuarkusTransaction.requiringNew().call(() -> cases.listAll().stream().map(CaseFile::id).sorted().toList());
        for (long id : ids) {
            Map<String, byte[]> files = QuarkusTransaction.requiringNew().call(() -> {
                CaseFile file = cases.withPeople(id).orElseThrow();
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                copies.write(file.patient().id(), file.clinician(), out);
                return unzipped(out.toByteArray());
            });
            CaseRecord record = QuarkusTransaction.requiringNew().call(() -> records.of(cases.withPeople(id).orElseThrow()));
            String name = record.file().patient().name();
            String folder = files.keySet().stream().filter(path -> path.contains("/")).findFirst().orElseThrow().replaceFirst("/.*", "/");
            assertTrue(new String(files.get("read-me.txt"), StandardCharsets.UTF_8).contains(name));
            try (var pdf = Loader.loadPDF(files.get(folder + "record.pdf"))) {
                assertTrue(new PDFTextStripper().getText(pdf).contains(name), name);
            }
            JsonNode written = json.readTree(files.get(folder + "record.json"));
            assertEquals(record.file().patient().fileNumber(), written.at("/patient/file_number").asText());
            assertEquals(record.visits().size(), written.get("visits").size());
            assertEquals(record.reports().size(), written.get("symptom_reports").size());
            assertEquals(record.scores().size(), written.get("scores").size());
            assertEquals(record.screens().size(), written.get("red_flag_screens").size());
            assertEquals(record.prescriptions().size(), written.get("exercises").size());
            assertTrue(written.get("in_words").size() > 3, name);
            assertEquals("Bundle", json.readTree(files.get(folder + "fhir-bundle.json")).get("resourceType").asText());
            for (SignedCopy letter : record.letters()) {
                assertArrayEquals(letter.pdf(), files.get(folder + "letters/letter-" + letter.reference().replace('/', '-') + ".pdf"));
            }
            assertEquals(4 + record.letters().size(), files.size(), files.keySet().toString());
        }
    }
}
