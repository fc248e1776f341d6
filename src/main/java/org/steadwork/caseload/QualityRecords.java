package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.Session;

/** What the quality indicators need beyond the sums of the cases: flags, letters, findings and notes of the chosen cases, in five queries. */
@ApplicationScoped
class QualityRecords {

    /** A flag found as urgent or above. {@code calledOn} is the day of the first call at or after it was raised, null without one. */
    record UrgentFlag(String urgency, LocalDate raisedOn, LocalDate calledOn, LocalDate seenOn) {
    }

    /** A letter to an employer that was sent. */
    record SentLetter(boolean report, LocalDate sentOn, LocalDate assessedOn, LocalDate shownOn) {
    }

    record Agreed(LocalDate agreedOn, LocalDate doneOn) {
    }

    /** All of it. */
    record Found(List<UrgentFlag> flags, List<SentLetter> letters, List<Agreed> agreed, int overrides, int unsigned) {
    }

    private interface Maker<T> {
        T of(ResultSet row) throws SQLException;
    }

    @Inject
    EntityManager db;

    Found of(Selection selection, Instant unsignedBefore) {
        List<Object> chosen = new ArrayList<>();
        String which = " and exists (select 1 from case_outcome" + selection.where(chosen) + " and case_outcome.case_file_id = ";
        return db.unwrap(Session.class).doReturningWork(connection -> {
            List<UrgentFlag> flags = rows(connection, "select f.found_urgency, f.raised_at, (select min(c.called_at) from red_flag_call c where c.case_file_id ="
                    + " f.case_file_id and c.called_at >= cast(f.raised_at as date)), f.seen_on from red_flag f where f.found_urgency in ('EMERGENCY_NOW', 'SAME_DAY',"
                    + " 'URGENT_2_WEEKS')" + which + "f.case_file_id)", chosen,
                    row -> new UrgentFlag(row.getString(1), local(row, 2), row.getTimestamp(3) == null ? null : row.getTimestamp(3).toLocalDateTime().toLocalDate(), day(row, 4)));
            List<SentLetter> letters = rows(connection, "select l.kind, (select min(e.happened_on) from letter_event e where e.letter_id = l.id and e.kind = 'SENT'),"
                    + " (select max(a.assessed_on) from workplace_assessment a where a.case_file_id = l.case_file_id and a.assessed_on <= (select min(e.happened_on)"
                    + " from letter_event e where e.letter_id = l.id and e.kind = 'SENT')), (select min(e.happened_on) from letter_event e where e.letter_id = l.id"
                    + " and e.kind in ('AGREED', 'DECLINED_TO_SEE', 'CHANGES_ASKED', 'DISAGREED')) from letter l where l.employer_id is not null and exists (select 1"
                    + " from letter_event e where e.letter_id = l.id and e.kind = 'SENT')" + which + "l.case_file_id)", chosen,
                    row -> new SentLetter(row.getString(1).equals("employer_report"), day(row, 2), day(row, 3), day(row, 4)));
            List<Agreed> agreed = rows(connection, "select agreed_on, done_on from workplace_finding f where f.agreed_on is not null" + which + "f.case_file_id)", chosen,
                    row -> new Agreed(day(row, 1), day(row, 2)));
            int overrides = count(connection, "select count(*) from disclosure_override o join letter l on l.id = o.letter_id where true" + which + "l.case_file_id)", chosen);
            List<Object> withMoment = new ArrayList<>(List.of(OffsetDateTime.ofInstant(unsignedBefore, ZoneOffset.UTC)));
            withMoment.addAll(chosen);
            int unsigned = count(connection, "select count(*) from visit_note n join visit v on v.id = n.visit_id where n.signed_at is null and n.drafted_at < ?"
                    + which + "v.case_file_id)", withMoment);
            return new Found(flags, letters, agreed, overrides, unsigned);
        });
    }

    private static int count(Connection db, String sql, List<Object> values) throws SQLException {
        return rows(db, sql, values, row -> row.getInt(1)).get(0);
    }

    private static <T> List<T> rows(Connection db, String sql, List<Object> values, Maker<T> maker) throws SQLException {
        List<T> rows = new ArrayList<>();
        try (PreparedStatement statement = db.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                statement.setObject(i + 1, values.get(i));
            }
            statement.setFetchSize(5000);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    rows.add(maker.of(row));
                }
            }
        }
        return rows;
    }

    private static LocalDate day(ResultSet row, int column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }

    /** The day of a moment in the clinic's zone. */
    private static LocalDate local(ResultSet row, int column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).atZoneSameInstant(ZoneId.systemDefault()).toLocalDate();
    }
}
