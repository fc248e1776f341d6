package org.steadwork.caseload;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CloseReason;
import org.steadwork.casefile.WorkStatusCode;

/** Reads the facts of all cases whose numbers lie in a range, each table once: nine statements for one case and for a thousand. */
final class FactReading {

    private final Connection db;
    private final long from;
    private final long to;
    private final Map<Long, CaseFacts> cases = new LinkedHashMap<>();

    /** What is done with a row that belongs to a case. */
    private interface Row {
        void take(CaseFacts facts, ResultSet row) throws SQLException;
    }

    private FactReading(Connection db, long from, long to) {
        this.db = db;
        this.from = from;
        this.to = to;
    }

    /** Reads all cases numbered {@code from} to {@code to}, both included. */
    static Collection<CaseFacts> of(Connection db, long from, long to) throws SQLException {
        FactReading reading = new FactReading(db, from, to);
        reading.heads();
        reading.contacts();
        reading.workPlace();
        return reading.cases.values();
    }

    private void heads() throws SQLException {
        try (PreparedStatement statement = db.prepareStatement("select c.id, c.patient_id, c.clinician_id, p.employer_id, c.opened_on,"
                + " c.closed_on, c.close_reason, c.referred_on from case_file c join patient p on p.id = c.patient_id where c.id between ? and ? order by c.id")) {
            statement.setLong(1, from);
            statement.setLong(2, to);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    long employer = row.getLong(4);
                    Long employerId = row.wasNull() ? null : employer;
                    String reason = row.getString(7);
                    cases.put(row.getLong(1), new CaseFacts(row.getLong(1), row.getLong(2), row.getLong(3), employerId, day(row, 5), day(row, 6),
                            reason == null ? null : CloseReason.valueOf(reason), day(row, 8)));
                }
            }
        }
    }

    private void contacts() throws SQLException {
        read("select case_file_id, visited_on, attendance from visit where case_file_id between ? and ? order by case_file_id, visited_on, number",
                (facts, row) -> facts.visits.add(new CaseFacts.Visited(day(row, 2), Attendance.valueOf(row.getString(3)))));
        read("select r.case_file_id, r.reported_on, r.symptom_free, s.zone, s.pain_worst from symptom_report r left join region_symptom s"
                + " on s.symptom_report_id = r.id where r.case_file_id between ? and ? order by r.case_file_id, r.reported_on, s.zone",
                (facts, row) -> facts.reports.add(new CaseFacts.Reported(day(row, 2), row.getBoolean(3), row.getString(4), integer(row, 5))));
        read("select case_file_id, scored_on, instrument, instrument_version, score_value from score where case_file_id between ? and ?"
                + " order by case_file_id, scored_on, id", (facts, row) -> {
                    double value = row.getDouble(5);
                    facts.scores.add(new CaseFacts.Scored(day(row, 2), row.getString(3), row.getString(4), row.wasNull() ? null : Double.valueOf(value)));
                });
        read("select case_file_id, from_on, until_on, code from work_status where case_file_id between ? and ? order by case_file_id, from_on",
                (facts, row) -> facts.statuses.add(new CaseFacts.Worked(day(row, 2), day(row, 3), WorkStatusCode.valueOf(row.getString(4)))));
        read("select case_file_id, screened_on, open_answers from red_flag_screen where case_file_id between ? and ? order by case_file_id, screened_on, id",
                (facts, row) -> facts.screens.add(new CaseFacts.Screened(day(row, 2), row.getString(3) == null || row.getString(3).isEmpty())));
    }

    private void workPlace() throws SQLException {
        read("select case_file_id from workplace_assessment where case_file_id between ? and ?", (facts, row) -> facts.assessed = true);
        read("select case_file_id, criterion_id, advised_on, agreed_on, done_on from workplace_finding where case_file_id between ? and ?"
                + " order by case_file_id, criterion_id, id", (facts, row) -> facts.findings.add(new CaseFacts.Found(row.getString(2),
                        row.getObject(3) != null || row.getObject(4) != null, row.getObject(5) != null)));
        read("select case_file_id, from_ref from case_link where case_file_id between ? and ? and from_kind = 'SYMPTOM' and decision = 'CONFIRMED'",
                (facts, row) -> facts.linkedZones.add(row.getString(2)));
    }

    private void read(String sql, Row taken) throws SQLException {
        try (PreparedStatement statement = db.prepareStatement(sql)) {
            statement.setLong(1, from);
            statement.setLong(2, to);
            statement.setFetchSize(1000);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    CaseFacts facts = cases.get(row.getLong(1));
                    if (facts != null) {
                        taken.take(facts, row);
                    }
                }
            }
        }
    }

    private static LocalDate day(ResultSet row, int column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }

    private static Integer integer(ResultSet row, int column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : Integer.valueOf(value);
    }
}
