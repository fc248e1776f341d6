package org.steadwork.caseload;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CloseReason;
import org.steadwork.casefile.WorkStatusCode;

/** The table {@code case_outcome}: reads and writes its rows over plain JDBC. */
final class OutcomeRows {

    static final String COLUMNS = "case_file_id, patient_id, clinician_id, employer_id, opened_on, closed_on, close_reason, region, regions,"
            + " referred_on, first_visit_on, last_contact_on, attended, missed, pain_first, pain_last, measure, measure_region, measure_first,"
            + " measure_last, off_on, full_on, full_until, days_off, work_first, work_last, screen, assessed, findings, linked_first, linked_last,"
            + " unlinked_first, unlinked_last";
    private static final String SET = " set rule = ?, " + COLUMNS.substring(COLUMNS.indexOf(' ') + 1).replace(",", " = ?,") + " = ?";

    private OutcomeRows() {
    }

    /** Reads the rows of a query that selects {@link #COLUMNS}; {@code values} are its parameters. */
    static List<CaseOutcome> read(Connection db, String sql, List<?> values) throws SQLException {
        List<CaseOutcome> rows = new ArrayList<>();
        try (PreparedStatement statement = db.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                statement.setObject(i + 1, values.get(i));
            }
            statement.setFetchSize(5000);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    rows.add(row(row));
                }
            }
        }
        return rows;
    }

    private static CaseOutcome row(ResultSet row) throws SQLException {
        String reason = row.getString(7);
        String region = row.getString(8);
        return new CaseOutcome(row.getLong(1), row.getLong(2), row.getLong(3), number(row, 4), day(row, 5), day(row, 6),
                reason == null ? null : CloseReason.valueOf(reason), region == null ? null : BodyRegion.valueOf(region), row.getInt(9),
                day(row, 10), day(row, 11), day(row, 12), row.getInt(13), row.getInt(14), integer(row, 15), integer(row, 16), row.getString(17),
                row.getString(18), amount(row, 19), amount(row, 20), day(row, 21), day(row, 22), day(row, 23), integer(row, 24), status(row, 25),
                status(row, 26), CaseOutcome.Screening.valueOf(row.getString(27)), row.getBoolean(28), row.getString(29), amount(row, 30),
                amount(row, 31), amount(row, 32), amount(row, 33));
    }

    /** Makes an empty row for each case that has none, so that it can be locked; a case that is gone gets none. */
    static void begin(Connection db, Collection<Long> caseIds) throws SQLException {
        try (PreparedStatement insert = db.prepareStatement("insert into case_outcome (case_file_id, rule) select id, 0 from case_file where id = ?"
                + " on conflict do nothing")) {
            for (long id : caseIds) {
                insert.setLong(1, id);
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    /** Holds the row of a case until the transaction ends; whoever holds it before is waited for, and what it stored is seen from then on. */
    static void lock(Connection db, long caseId) throws SQLException {
        try (PreparedStatement lock = db.prepareStatement("select case_file_id from case_outcome where case_file_id = ? for update")) {
            lock.setLong(1, caseId);
            lock.executeQuery().close();
        }
    }

    /** Stores rows that are there already. */
    static void write(Connection db, Collection<CaseOutcome> rows, int rule) throws SQLException {
        try (PreparedStatement update = db.prepareStatement("update case_outcome" + SET + " where case_file_id = ?")) {
            for (CaseOutcome row : rows) {
                Object[] values = {rule, row.patientId(), row.clinicianId(), row.employerId(), row.openedOn(), row.closedOn(), name(row.closeReason()),
                    name(row.region()), row.regions(), row.referredOn(), row.firstVisitOn(), row.lastContactOn(), row.attended(), row.missed(),
                    row.painFirst(), row.painLast(), row.measure(), row.measureRegion(), row.measureFirst(), row.measureLast(), row.offOn(),
                    row.fullOn(), row.fullUntil(), row.daysOff(), name(row.workFirst()), name(row.workLast()), name(row.screen()), row.assessed(),
                    row.findings(), row.linkedFirst(), row.linkedLast(), row.unlinkedFirst(), row.unlinkedLast(), row.caseId()};
                for (int i = 0; i < values.length; i++) {
                    if (values[i] == null) {
                        update.setNull(i + 1, TYPES[i]);
                    } else {
                        update.setObject(i + 1, values[i]);
                    }
                }
                update.addBatch();
            }
            update.executeBatch();
        }
    }

    // the kinds of the values in the order in which they are written; a null must name its kind
    private static final int[] TYPES = types("iLLLDDSSiDDDiiiiSSddDDDiSSSbSddddL");

    private static int[] types(String letters) {
        return letters.chars().map(letter -> switch (letter) {
            case 'i' -> Types.INTEGER;
            case 'L' -> Types.BIGINT;
            case 'D' -> Types.DATE;
            case 'S' -> Types.VARCHAR;
            case 'd' -> Types.DOUBLE;
            default -> Types.BOOLEAN;
        }).toArray();
    }

    private static String name(Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    private static LocalDate day(ResultSet row, int column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }

    private static WorkStatusCode status(ResultSet row, int column) throws SQLException {
        String name = row.getString(column);
        return name == null ? null : WorkStatusCode.valueOf(name);
    }

    private static Long number(ResultSet row, int column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : Long.valueOf(value);
    }

    private static Integer integer(ResultSet row, int column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : Integer.valueOf(value);
    }

    private static Double amount(ResultSet row, int column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : Double.valueOf(value);
    }
}
