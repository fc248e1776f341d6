package org.steadwork.retention;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.letter.RecordCopy;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;

/** Everything about one person in one ZIP: a copy of the record of each case (PDF), every row (JSON), signed letters and photographs. */
@ApplicationScoped
class PersonExport {

    private static final String LEFT_OUT = "left out: it opens nothing and says nothing about the person";

    @Inject
    AgroalDataSource source;

    @Inject
    CaseFiles cases;

    @Inject
    RecordCopy copies;

    @Inject
    Clock clock;

    private final ObjectMapper json = new ObjectMapper().registerModule(new JavaTimeModule()).disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .enable(SerializationFeature.INDENT_OUTPUT);

    @Transactional
    public byte[] of(Patient patient, Account author) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes); Connection db = source.getConnection()) {
            put(zip, "READ-ME.txt", readMe(patient).getBytes(StandardCharsets.UTF_8));
            for (CaseFile file : cases.ofPatient(patient.id())) {
                put(zip, "record-case-" + file.id() + ".pdf", copies.print(file, author));
            }
            Map<String, List<Map<String, Object>>> rows = PersonRows.of(db, patient.id()).read();
            put(zip, "rows.json", json.writeValueAsBytes(json(rows, zip)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SQLException e) {
            throw new IllegalStateException("The rows of a person could not be read", e);
        }
        return bytes.toByteArray();
    }

    private String readMe(Patient patient) {
        return """
                Everything Steadwork keeps about %s, %s, as of %s.

                record-case-N.pdf   a copy of the record of each case, in words
                rows.json           every row of every table, with all earlier states, as stored
                files               signed letters as they were sent, and photographs

                Before it is handed out, read it through: what is about other people, or could do serious harm, is a legal question.
                """.formatted(patient.name(), patient.fileNumber(), Dates.shown(LocalDate.now(clock)));
    }

    /** Makes the rows JSON; files in them become files of their own. */
    private ObjectNode json(Map<String, List<Map<String, Object>>> tables, ZipOutputStream zip) throws IOException {
        ObjectNode all = json.createObjectNode();
        for (Map.Entry<String, List<Map<String, Object>>> table : tables.entrySet()) {
            int number = 0;
            ArrayNode list = all.putArray(table.getKey());
            for (Map<String, Object> row : table.getValue()) {
                number++;
                ObjectNode node = list.addObject();
                for (Map.Entry<String, Object> value : row.entrySet()) {
                    node.set(value.getKey(), json.valueToTree(shown(table.getKey(), number, value, zip)));
                }
            }
        }
        return all;
    }

    private static Object shown(String table, int number, Map.Entry<String, Object> value, ZipOutputStream zip) throws IOException {
        if (value.getKey().equals("token_hash")) {
            return LEFT_OUT;
        }
        if (value.getValue() instanceof byte[] file) {
            String name = "files/" + table.replace('_', '-') + "-" + number + "-" + value.getKey() + (table.equals("signed_letter") ? ".pdf" : ".jpg");
            put(zip, name, file);
            return name;
        }
        return value.getValue();
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
