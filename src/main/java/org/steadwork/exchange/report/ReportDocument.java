package org.steadwork.exchange.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.exchange.csv.CsvText;

/** Writes a page of rows as the JSON or the CSV of the reporting API. */
final class ReportDocument {

    private static final List<String> COLUMNS = List.of("case", "patient", "age_band", "sex", "regions", "opened_on", "closed_on", "close_reason", "visits_attended", "instrument",
            "instrument_version", "scored_on", "value", "unit", "estimated");

    private ReportDocument() {
    }

    static Map<String, Object> json(List<ReportRow> rows, int page, int size, long total) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("page", page);
        document.put("size", size);
        document.put("total", total);
        document.put("rows", rows.stream().map(ReportDocument::row).toList());
        return document;
    }

    private static Map<String, Object> row(ReportRow row) {
        Map<String, Object> written = new LinkedHashMap<>();
        written.put("case", row.caseKey());
        written.put("patient", row.patientKey());
        written.put("age_band", row.ageBand());
        written.put("sex", row.sex());
        written.put("regions", row.regions());
        written.put("opened_on", row.openedOn().toString());
        written.put("closed_on", row.closedOn() == null ? null : row.closedOn().toString());
        written.put("close_reason", row.closeReason());
        written.put("visits_attended", row.visitsAttended());
        written.put("scores", row.scores().stream().map(ReportDocument::score).toList());
        return written;
    }

    private static Map<String, Object> score(ReportRow.ReportScore score) {
        Map<String, Object> written = new LinkedHashMap<>();
        written.put("instrument", score.instrument());
        written.put("version", score.version());
        written.put("scored_on", score.on().toString());
        written.put("value", score.value());
        written.put("unit", score.unit());
        written.put("estimated", score.estimated());
        return written;
    }

    /** One line for each score, the case repeated; a case without a score has one line. */
    static byte[] csv(List<ReportRow> rows) {
        List<List<?>> lines = new ArrayList<>();
        for (ReportRow row : rows) {
            List<Object> about = Arrays.asList(row.caseKey(), row.patientKey(), row.ageBand(), row.sex(), String.join(" ", row.regions()), row.openedOn(), row.closedOn(),
                    row.closeReason(), row.visitsAttended());
            if (row.scores().isEmpty()) {
                lines.add(line(about, Arrays.asList(null, null, null, null, null, null)));
            }
            row.scores().forEach(score -> lines.add(line(about, Arrays.asList(score.instrument(), score.version(), score.on(), score.value(), score.unit(),
                    score.estimated() ? "yes" : "no"))));
        }
        return CsvText.write(COLUMNS, lines, false);
    }

    private static List<Object> line(List<Object> about, List<Object> score) {
        List<Object> line = new ArrayList<>(about);
        line.addAll(score);
        return line;
    }
}
