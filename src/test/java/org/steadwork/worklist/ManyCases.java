package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.sql.DataSource;

/**
 * Writes as many open cases as asked for, the same ones for the same seed: each with four visits, three symptom reports, four scores, a
 * red-flag screen, a work status, two exercises with four reports each and two findings. Three in ten are overdue, one in fifty has an
 * open flag, one in ten an unsigned note; the other shares stand beside each row.
 */
@ApplicationScoped
class ManyCases {

    private static final int BATCH = 1000;
    private static final long FIRST = 5_000_000;

    private final Map<String, List<Object[]>> rows = new LinkedHashMap<>();
    private final Random random = new Random(20261130);
    private long next = FIRST;

    @Inject
    DataSource source;

    /** Adds open cases of these clinicians, in one transaction. */
    void add(int count, List<Long> clinicians, LocalDate today) throws SQLException {
        try (Connection connection = source.getConnection()) {
            for (int i = 0; i < count; i++) {
                one(clinicians.get(i % clinicians.size()), today);
                if (i % BATCH == BATCH - 1 || i == count - 1) {
                    write(connection);
                }
            }
            try (Statement analyse = connection.createStatement()) {
                analyse.execute("analyze");
            }
        }
    }

    private void one(long clinician, LocalDate today) {
        long patient = next++;
        long file = next++;
        LocalDate opened = today.minusDays(60);
        put("patient (id, version, file_number, given_name, family_name, search_name, birth_date, sex, handedness, registered_on)", patient, 0, "B" + patient, "Given" + patient % 97,
                "Family" + patient, "family" + patient, LocalDate.of(1980, 1, 1), "FEMALE", "RIGHT", opened);
        LocalDate review = chance(3) ? today.minusDays(1 + random.nextInt(20)) : today.plusDays(1 + random.nextInt(20));
        put("case_file (id, version, patient_id, clinician_id, complaint, onset_on, opened_on, next_review_on)", file, 0, patient, clinician, "Neck ache at work", opened.minusDays(30), opened, review);
        for (int v = 1; v <= 4; v++) {
            long visit = next++;
            LocalDate day = opened.plusDays(v * 13L);
            put("visit (id, version, case_file_id, number, visited_on, kind, attendance)", visit, 0, file, v, day, v == 1 ? "INITIAL" : "FOLLOW_UP", "ATTENDED");
            if (v < 4 || !chance(1)) {
                put("visit_note (id, version, visit_id, drafted_by, drafted_at, signed_by_id, signed_by, signed_at)", next++, 0, visit, "B", at(day), clinician, "B", at(day));
            }
            put("score (id, version, case_file_id, scored_on, instrument, instrument_version, answers, score_value, unit, estimated, recorded_by, recorded_at)", next++, 0, file, day, "ndi", "1",
                    "1 1 1 1 1 1 1 1 1 1", 20.0 + 2 * random.nextInt(10), "%", false, "B", at(day));
            if (v < 4) {
                long report = next++;
                put("symptom_report (id, version, case_file_id, reported_on, symptom_free, course, night_waking, cough_or_sneeze, saved_by, saved_at)", report, 0, file, day, false, "NOT_ASKED",
                        "NO", "NO", "B", at(day));
                put("region_symptom (id, symptom_report_id, zone, pain_now, pain_worst, pain_average, kinds)", next++, report, "neck", 3, 4 + random.nextInt(3), 4, "");
            }
        }
        long screen = next++;
        put("red_flag_screen (id, version, case_file_id, occasion, screened_on, regions, left_open, begun_by_id, begun_at, saved_at, verdict, open_answers, suspended_until_asked, signed_by_id,"
                + " signed_at)", screen, 0, file, "FULL", today.minusDays(random.nextInt(27)), "neck", "", clinician, at(opened), at(opened), "CLEAR", "", "", clinician, at(opened));
        if (random.nextInt(50) == 0) {
            put("red_flag (id, version, case_file_id, screen_id, origin, name, points_to, action, suspends, certain, found_urgency, urgency, raised_at, urgency_since)", next++, 0, file, screen, "b",
                    "night pain", "a cause", "look", "", true, "URGENT_2_WEEKS", "URGENT_2_WEEKS", at(opened), at(opened));
        }
        put("work_status (id, version, case_file_id, code, from_on, decided_by, recorded_by, recorded_at)", next++, 0, file, chance(1) ? "OFF" : "FULL", opened, "DOCTOR", "B", at(opened));
        for (int e = 0; e < 2; e++) {
            long given = next++;
            put("exercise_prescription (id, version, case_file_id, exercise_key, side, repetitions, sides, days_a_week, effort, pain_ceiling, started_on, given_by, given_at)", given, 0, file,
                    e == 0 ? "sh_rolls" : "gn_breathing", "BOTH", "10", 1, "7", "light", 3, opened, "B", at(opened));
            for (int w = 0; w < 4; w++) {
                put("exercise_adherence (id, version, prescription_id, week_to, done, planned, next_morning, reported_by)", next++, 0, given, today.minusDays(7L * w + 1), 3 + random.nextInt(5), 7,
                        "NOT_ASKED", "B");
            }
        }
        long assessment = next++;
        put("workplace_assessment (id, version, case_file_id, assessed_on, lenses, laptop_alone)", assessment, 0, file, opened, "SINGLE_OR_NONE", false);
        for (int f = 0; f < 2; f++) {
            put("workplace_finding (id, version, case_file_id, assessment_id, criterion_id, verdict, found_on, agreed_on, agreed_with, done_on)", next++, 0, file, assessment, "CH-" + (f + 1),
                    "OUT_OF_RANGE", opened, opened, "the manager", chance(8) ? today : null);
        }
    }

    /** True in so many of ten. */
    private boolean chance(int ofTen) {
        return random.nextInt(10) < ofTen;
    }

    private static OffsetDateTime at(LocalDate day) {
        return day.atTime(LocalTime.NOON).atZone(ZoneId.systemDefault()).toOffsetDateTime();
    }

    private void put(String table, Object... values) {
        rows.computeIfAbsent(table, name -> new ArrayList<>()).add(values);
    }

    private void write(Connection connection) throws SQLException {
        for (Map.Entry<String, List<Object[]>> table : rows.entrySet()) {
            int columns = table.getValue().get(0).length;
            try (PreparedStatement insert = connection.prepareStatement("insert into " + table.getKey() + " values (?" + ", ?".repeat(columns - 1) + ")")) {
                for (Object[] values : table.getValue()) {
                    for (int i = 0; i < columns; i++) {
                        insert.setObject(i + 1, values[i]);
                    }
                    insert.addBatch();
                }
                insert.executeBatch();
            }
        }
        rows.clear();
    }
}
