package org.steadwork.oversight;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;

/**
 * The audit trail as a file, in the order of its chain: CSV (RFC 4180) for people, JSON for programs. The fields and hashes are those that
 * the chain is made of, so that the file can be checked elsewhere.
 */
@Path("/clinic/audit/export.{auditForm: csv|json}")
@RolesAllowed("lead")
class AuditExportPages {

    private static final int MOST_ROWS = 100_000;

    @Inject
    AuditRows rows;

    @Inject
    AuditTrail audit;

    @Inject
    ObjectMapper json;

    @Inject
    Clock clock;

    @GET
    public Response export(@RestPath String auditForm, @RestQuery String person, @RestQuery String patient, @RestQuery String action,
            @RestQuery String from, @RestQuery String until) {
        AuditFilter filter = new AuditFilter(person, patient, action, from, until, clock.getZone());
        audit.head();
        List<AuditRow> found = rows.inOrder(filter, MOST_ROWS + 1);
        boolean cut = found.size() > MOST_ROWS;
        List<AuditRow> exported = cut ? found.subList(0, MOST_ROWS) : found;
        audit.record("exported the audit trail", null, null, exported.size() + " entries as " + auditForm + (cut ? ", cut" : ""));
        byte[] file = switch (auditForm) {
            case "csv" -> csv(exported, cut);
            case "json" -> json(exported, cut);
            default -> throw new NotFoundException();
        };
        return Response.ok(file).type(auditForm.equals("csv") ? "text/csv; charset=utf-8" : "application/json; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"audit-trail." + auditForm + "\"").header("Cache-Control", "no-store").build();
    }

    private static byte[] csv(List<AuditRow> rows, boolean cut) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(columns(null).keySet());
            for (AuditRow row : rows) {
                csv.printRecord(columns(row).values().stream().map(AuditExportPages::harmless).toList());
            }
            if (cut) {
                csv.printRecord("cut after " + MOST_ROWS + " entries: choose a shorter time");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private byte[] json(List<AuditRow> rows, boolean cut) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("exportedAt", Instant.now(clock).toString());
        file.put("cut", cut);
        file.put("entries", rows.stream().map(AuditExportPages::columns).toList());
        try {
            return json.writerWithDefaultPrettyPrinter().writeValueAsBytes(file);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, Object> columns(AuditRow row) {
        Map<String, Object> columns = new LinkedHashMap<>();
        List<Object> values = row == null ? null : new ArrayList<>();
        if (row != null) {
            values.add(row.sequence());
            values.add(row.id());
            values.add(row.happenedAt().toString());
            values.add(row.accountId());
            values.add(row.actor());
            values.add(row.action());
            values.add(row.patientId());
            values.add(row.fileNumber());
            values.add(row.caseFileId());
            values.add(row.detail());
            values.add(row.address());
            values.add(row.hash());
        }
        List<String> names = List.of("sequence", "id", "happened_at", "account_id", "who", "action", "patient_id", "file_number", "case_id", "detail", "address", "hash");
        for (int i = 0; i < names.size(); i++) {
            columns.put(names.get(i), values == null ? null : values.get(i));
        }
        return columns;
    }

    /** A cell that a spreadsheet would run as a formula gets an apostrophe before it. */
    private static Object harmless(Object cell) {
        return cell instanceof String text && !text.isEmpty() && "=+-@\t\r\0".indexOf(text.charAt(0)) >= 0 ? "'" + text : cell;
    }
}
