package org.steadwork.measure;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.Scored;

/**
 * Writes one invented case after the other. Pain falls for most, stays for some and rises for few; one in six is lost after two visits;
 * one in three was off work; a work place that was looked at more often shows what belongs to the complaint. All shares are proposals.
 */
final class InventedCase {

    private static final int VISITS = 5;
    private static final int DAYS_APART = 14;
    private static final int CASES_A_BATCH = 200;
    /** A case is closed some weeks after its last visit, but for one in so many. */
    private static final int ONE_STAYS_OPEN_IN = 100;
    private static final List<String> SAID = List.of("Worse towards the end of the day, eased by a walk. Did the exercises on four days of seven.",
            "Slept through twice this week. The screen was raised; looks up less often.", "No change at work, better at the weekend. Stopped the second exercise, it pulled.",
            "A long week of meetings; sat through three of them. Pain came later than before.");
    private static final List<String> FOUND = List.of("Rotation to the left 60 degrees, to the right 75. Tender over the upper trapezius.",
            "Grip 28 and 34 kg. No sign of nerve involvement.", "Flexion full, end of range uncomfortable. Repeated movement no worse.");
    private static final List<String> REASONS = List.of("GOALS_MET", "GOALS_MET", "GOALS_MET", "SELF_MANAGING", "SELF_MANAGING", "PLATEAU", "REFERRED_ON", "OWN_WISH", "MOVED");

    private final Random random;
    private final LocalDate today;
    private final Instruments instruments;
    private final boolean searchable;
    private final Map<String, Batch> tables = new LinkedHashMap<>();
    private final Map<String, Long> lastIds = new LinkedHashMap<>();
    private int waiting;

    /** What a case's rows have in common. */
    private record Course(long id, LocalDate opened, LocalDate closed, Complaint complaint, List<LocalDate> days, int painFirst, int painLast) {

        /** Pain at a visit on the way from the first to the last rating. */
        int painAt(int visit) {
            return Math.max(0, Math.min(10, painFirst + Math.round((painLast - painFirst) * visit / (VISITS - 1f))));
        }
    }

    InventedCase(Connection db, Random random, LocalDate today, Instruments instruments, boolean searchable) throws SQLException {
        this.random = random;
        this.today = today;
        this.instruments = instruments;
        this.searchable = searchable;
        // in the order in which one needs the other
        for (String columns : List.of(
                "patient (id, version, file_number, given_name, family_name, search_name, birth_date, sex, handedness, job_title, employer_id, site_id, department, registered_on)",
                "patient_word (patient_id, beginning, word)",
                "case_file (id, version, patient_id, clinician_id, complaint, onset_on, referred_by, referred_on, opened_on, closed_on, close_reason, next_review_on)",
                "visit (id, version, case_file_id, number, visited_on, kind, attendance)",
                "visit_note (id, version, visit_id, subjective, objective, assessment, plan, drafted_by, drafted_at, signed_by_id, signed_by, signed_at)",
                "symptom_report (id, version, case_file_id, reported_on, symptom_free, course, night_waking, cough_or_sneeze, saved_by, saved_at)",
                "region_symptom (id, symptom_report_id, zone, pain_now, pain_worst, pain_average, kinds)",
                "score (id, version, case_file_id, scored_on, instrument, instrument_version, answers, score_value, low_value, high_value, unit, estimated, recorded_by, recorded_at)",
                "work_status (id, version, case_file_id, code, from_on, until_on, decided_by, recorded_by, recorded_at)",
                "red_flag_screen (id, version, case_file_id, occasion, screened_on, regions, left_open, begun_by_id, begun_at, saved_at, verdict, open_answers, suspended_until_asked, signed_by_id,"
                        + " signed_at)",
                "workplace_assessment (id, version, case_file_id, assessed_on, lenses, laptop_alone)",
                "workplace_finding (id, version, case_file_id, assessment_id, criterion_id, verdict, found_on, advised_on, agreed_on, agreed_with, done_on)",
                "case_link (id, version, case_file_id, from_kind, from_ref, from_title, to_kind, to_ref, to_title, decision, reason, decided_by, decided_at)")) {
            tables.put(columns.substring(0, columns.indexOf(' ')), new Batch(db, columns));
        }
    }

    void person(long id, String fileNumber, String given, String family, LocalDate born, Long employer, Long site, String department, LocalDate registered)
            throws SQLException {
        String search = (given + " " + family).toLowerCase(Locale.ROOT);
        add("patient", id, 0, fileNumber, given, family, search, born, random.nextBoolean() ? "FEMALE" : "MALE", random.nextInt(10) == 0 ? "LEFT" : "RIGHT", "Clerk",
                employer, site, department, registered);
        for (String word : searchable ? Set.of(search.split(" ")) : Set.<String>of()) {
            add("patient_word", id, word.substring(0, 2), word);
        }
    }

    void write(long id, long patient, long clinician, LocalDate opened) throws SQLException {
        Complaint complaint = Complaint.at(random.nextInt(100));
        boolean lost = random.nextInt(6) == 0;
        int held = lost ? 2 : VISITS;
        List<LocalDate> days = new ArrayList<>();
        for (int i = 0; i < VISITS; i++) {
            days.add(opened.plusDays(i * DAYS_APART + (i == 0 ? 0 : random.nextInt(4))));
        }
        LocalDate end = days.get(VISITS - 1).plusDays(lost ? 30 : 1 + random.nextInt(20));
        LocalDate closed = end.isBefore(today) && random.nextInt(ONE_STAYS_OPEN_IN) > 0 ? end : null;
        int first = 3 + random.nextInt(7);
        int better = random.nextInt(10);
        int last = better < 6 ? first - 2 - random.nextInt(4) : better < 9 ? first - random.nextInt(2) : first + 1 + random.nextInt(2);
        Course course = new Course(id, opened, closed, complaint, days, first, Math.max(0, Math.min(10, last)));
        add("case_file", id, 0, patient, clinician, complaint.words, opened.minusDays(10 + random.nextInt(200)), "Doctor’s letter",
                random.nextInt(7) > 0 ? opened.minusDays(random.nextInt(16)) : null, opened, closed, closed == null ? null : lost ? "NON_ATTENDANCE"
                        : REASONS.get(random.nextInt(REASONS.size())), closed == null ? review(days) : null);
        visits(course, held, clinician);
        reports(course, held);
        scores(course, held);
        screen(course, clinician);
        if (random.nextInt(3) == 0) {
            offWork(course);
        } else if (random.nextInt(2) == 0) {
            status(course, random.nextInt(3) == 0 ? "MODIFIED" : "FULL", opened);
        }
        if (random.nextInt(20) < 11) {
            workPlace(course, clinician);
        }
        if (++waiting == CASES_A_BATCH) {
            flush();
        }
    }

    /** The next visit that is still to come, or, of a case that waits to be closed, some day around today. */
    private LocalDate review(List<LocalDate> days) {
        return days.stream().filter(day -> !day.isBefore(today)).findFirst().orElseGet(() -> today.plusDays(random.nextInt(20) - 5L));
    }

    private void visits(Course course, int held, long clinician) throws SQLException {
        for (int i = 0; i < VISITS; i++) {
            LocalDate day = course.days().get(i);
            int chance = random.nextInt(100);
            String attendance = day.isAfter(today) ? "PLANNED" : i == 0 ? "ATTENDED" : i >= held ? "MISSED" : chance < 90 ? "ATTENDED" : chance < 96 ? "MISSED"
                    : chance < 98 ? "LATE_CANCELLED" : "CANCELLED";
            long visit = next("visit");
            add("visit", visit, 0, course.id(), i + 1, day, i == 0 ? "INITIAL" : i == VISITS - 1 ? "DISCHARGE" : "FOLLOW_UP", attendance);
            if (attendance.equals("ATTENDED")) {
                note(visit, day, clinician);
            }
        }
    }

    /** Signed on the day; of the last two days one in three waits still. */
    private void note(long visit, LocalDate day, long clinician) throws SQLException {
        boolean signed = day.isBefore(today.minusDays(2)) || random.nextInt(3) > 0;
        add("visit_note", next("visit_note"), 0, visit, SAID.get(random.nextInt(SAID.size())), FOUND.get(random.nextInt(FOUND.size())), "As expected for the stage.",
                "Goes on with the programme; seen again in two weeks.", "invented", moment(day), signed ? clinician : null, signed ? "invented" : null, signed ? moment(day) : null);
    }

    private void reports(Course course, int held) throws SQLException {
        for (int visit : new int[] {0, 2, 4}) {
            if (visit < Math.max(held, 1) && !course.days().get(visit).isAfter(today)) {
                long report = next("symptom_report");
                int pain = course.painAt(visit);
                boolean free = pain == 0 && visit > 0;
                add("symptom_report", report, 0, course.id(), course.days().get(visit), free, "WORSE_LATER", "NO", "NOT_ASKED", "invented", moment(course.days().get(visit)));
                for (int i = 0; i < (free ? 0 : 1 + course.id() % 2); i++) {
                    add("region_symptom", next("region_symptom"), report, course.complaint().zones.get(i), Math.max(0, pain - 1), Math.max(0, pain - i),
                            Math.max(0, pain - 1), "");
                }
            }
        }
    }

    /** Ten scores of a case that was seen to its end: pain at three visits, the region's measure at two, work ability at two. */
    private void scores(Course course, int held) throws SQLException {
        for (int visit = 0; visit < Math.min(held, VISITS); visit++) {
            LocalDate day = course.days().get(visit);
            if (day.isAfter(today)) {
                return;
            }
            int pain = course.painAt(visit);
            if (visit % 2 == 0) {
                score(course, "nprs_worst", day, List.of(pain));
                score(course, "nprs_average", day, List.of(Math.max(0, pain - 1)));
            }
            if (visit == 0 || visit == VISITS - 1) {
                Instrument instrument = instruments.find(course.complaint().instrument).orElseThrow();
                double level = instrument.direction().improvement(1, 0) > 0 ? pain / 10.0 : 1 - pain / 10.0;
                score(course, instrument.key(), day, instrument.items().stream().map(item -> answer(item, level)).toList());
                score(course, "was", day, List.of(Math.max(0, 10 - pain)));
            }
        }
    }

    private Integer answer(Item item, double level) {
        double wanted = item.min() + level * (item.max() - item.min()) + random.nextGaussian() * 0.7;
        return (int) Math.max(item.min(), Math.min(item.max(), Math.round(wanted)));
    }

    private void score(Course course, String key, LocalDate day, List<Integer> answers) throws SQLException {
        Instrument instrument = instruments.find(key).orElseThrow();
        Scored scored = instrument.score(answers);
        add("score", next("score"), 0, course.id(), day, key, instrument.version(), answers.stream().map(String::valueOf).collect(Collectors.joining(" ")),
                scored.value().isPresent() ? Double.valueOf(scored.value().getAsDouble()) : null, null, null, instrument.unit(), false, "invented", moment(day));
    }

    private void screen(Course course, long clinician) throws SQLException {
        int chance = random.nextInt(100);
        if (chance < 94) {
            OffsetDateTime at = moment(course.opened());
            boolean open = chance < 6;
            add("red_flag_screen", next("red_flag_screen"), 0, course.id(), "FULL", course.opened(), "neck", "", clinician, at, at, open ? "INCOMPLETE" : "CLEAR",
                    open ? "nk_arm_power" : "", "", open ? null : clinician, open ? null : at);
        }
    }

    private void offWork(Course course) throws SQLException {
        LocalDate off = course.opened().minusDays(random.nextInt(20));
        status(course, "OFF", off);
        int days = 7 + random.nextInt(60);
        LocalDate back = off.plusDays(days);
        if (back.isBefore(today) && random.nextInt(10) < 8) {
            if (random.nextBoolean()) {
                status(course, "MODIFIED", back);
                back = back.plusDays(14);
            }
            if (back.isBefore(today)) {
                status(course, "FULL", back);
            }
        }
    }

    private void status(Course course, String code, LocalDate from) throws SQLException {
        add("work_status", next("work_status"), 0, course.id(), code, from, null, "WORKER", "invented", moment(from));
    }

    private void workPlace(Course course, long clinician) throws SQLException {
        LocalDate day = course.opened();
        long assessment = next("workplace_assessment");
        add("workplace_assessment", assessment, 0, course.id(), day, "SINGLE_OR_NONE", false);
        Set<String> found = new LinkedHashSet<>();
        for (Complaint other : Complaint.values()) {
            int chance = other == course.complaint() ? 45 : 22;
            other.criteria.stream().filter(criterion -> random.nextInt(100) < chance / other.criteria.size() + 5).forEach(found::add);
        }
        for (String criterion : found) {
            boolean advised = random.nextInt(10) < 8;
            boolean agreed = advised && random.nextInt(10) < 7 && !day.plusDays(7).isAfter(today);
            LocalDate change = day.plusDays(14 + random.nextInt(30));
            boolean done = agreed && random.nextInt(10) < 7 && !change.isAfter(today);
            add("workplace_finding", next("workplace_finding"), 0, course.id(), assessment, criterion, "OUT_OF_RANGE", day, advised ? day : null,
                    agreed ? day.plusDays(7) : null, agreed ? "Site manager" : null, done ? change : null);
            if (random.nextInt(3) == 0) {
                add("case_link", next("case_link"), 0, course.id(), "SYMPTOM", course.complaint().zones.get(0), "Complaint", "FINDING", criterion, "Finding",
                        random.nextInt(5) > 0 ? "CONFIRMED" : "REJECTED", "Worse at this desk.", clinician, moment(day));
            }
        }
    }

    private void add(String table, Object... values) throws SQLException {
        tables.get(table).add(values);
    }

    private long next(String table) {
        return lastIds.merge(table, 1_000_000L, (last, first) -> last + 1);
    }

    private static OffsetDateTime moment(LocalDate day) {
        return OffsetDateTime.of(day.atTime(10, 0), ZoneOffset.UTC);
    }

    /** Stores what waits, in the order in which one table needs the other. */
    void flush() throws SQLException {
        for (Batch table : tables.values()) {
            table.flush();
        }
        waiting = 0;
    }

    Map<String, Long> close() throws SQLException {
        flush();
        Map<String, Long> rows = new LinkedHashMap<>();
        for (Map.Entry<String, Batch> table : tables.entrySet()) {
            rows.put(table.getKey(), table.getValue().rows());
            table.getValue().close();
        }
        return rows;
    }
}
