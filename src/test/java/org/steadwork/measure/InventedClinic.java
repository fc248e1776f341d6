package org.steadwork.measure;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.steadwork.outcome.Instruments;

/**
 * Fills an empty clinic with invented cases over plain JDBC, the same for the same seed: employers with sites and departments, patients
 * (one in twelve comes twice), cases over five years, one after the other, with five booked visits each and their notes, ten scores, three
 * symptom reports, work status, red-flag screens, work places with findings, and links; a clinician has 250 new cases a year. About 35 rows
 * a case. Nobody in it is real.
 *
 * <pre>{@code
 * try (Connection db = dataSource.getConnection()) {
 *     new InventedClinic(db, 42, LocalDate.of(2026, 11, 1)).fill(10_000);
 * }
 * outcomeStart.rebuild(); // what is stored past Hibernate is summed up afterwards
 * }</pre>
 *
 * <p>About three minutes of one processor for 100,000 cases on H2. Not filled: the history tables, letters and programmes. The same SQL on H2 and PostgreSQL. Commits every few thousand cases.
 */
public final class InventedClinic {

    private static final int CASES_A_COMMIT = 5_000;
    private static final int CASES_AN_EMPLOYER = 200;
    private static final int CASES_A_CLINICIAN = 1_250;
    private static final int FEWEST_CLINICIANS = 8;
    private static final long FIRST_ID = 1_000_000;
    private static final int YEARS = 5;
    private static final List<String> GIVEN = List.of("Ada", "Bilal", "Carys", "Dunstan", "Elif", "Fergus", "Greta", "Hamish", "Ines", "Jonas", "Katya", "Leif",
            "Mina", "Nils", "Oona", "Piotr", "Quill", "Rhona", "Soren", "Tova", "Umar", "Vera", "Wanda", "Yusuf");
    private static final List<String> START = List.of("Alder", "Brack", "Cold", "Dun", "Elm", "Fen", "Gorse", "Hazel", "Ives", "Kestrel", "Larch", "Marl", "North",
            "Oak", "Pike", "Quarr", "Rook", "Sedge", "Thorn", "Under", "Vetch", "Withy");
    private static final List<String> END = List.of("brook", "combe", "dale", "field", "gate", "holm", "lock", "mere", "ridge", "stead", "thwaite", "wick");
    /** Of places of work alone, so that none is called as a patient is. */
    private static final List<String> PLACE_END = List.of("port", "haven", "cross", "moor", "shaw", "garth", "quay", "bridge");
    private static final List<String> DEPARTMENTS = List.of("Accounts", "Dispatch", "Customer calls", "Design", "Planning");

    private final Connection db;
    private final Random random;
    private final LocalDate today;
    private final List<Long> clinicians = new ArrayList<>();
    private final List<long[]> sites = new ArrayList<>();
    private boolean searchable = true;

    /** @param today the last day anything happened on; cases open in the five years before it */
    public InventedClinic(Connection db, long seed, LocalDate today) {
        this.db = db;
        this.random = new Random(seed);
        this.today = today;
    }

    /** Leaves out what the search for patients needs, a third of all rows. */
    public InventedClinic withoutSearch() {
        searchable = false;
        return this;
    }

    /** Stores so many cases and returns how many rows each table got. */
    public Map<String, Long> fill(int cases) throws SQLException {
        boolean auto = db.getAutoCommit();
        db.setAutoCommit(false);
        clinicians(Math.max(FEWEST_CLINICIANS, cases / CASES_A_CLINICIAN));
        employers(Math.max(3, cases / CASES_AN_EMPLOYER));
        InventedCase writer = new InventedCase(db, random, today, new Instruments(), searchable);
        long patient = 0;
        int given = 0;
        for (int i = 0; i < cases; i++) {
            boolean again = i > 0 && random.nextInt(12) == 0;
            if (!again) {
                patient = FIRST_ID + i;
                person(writer, patient, given++);
            }
            LocalDate opened = today.minusDays(1 + (long) YEARS * 365 * (cases - 1 - i) / cases);
            writer.write(FIRST_ID + i, patient, clinicians.get(random.nextInt(clinicians.size())), opened);
            if ((i + 1) % CASES_A_COMMIT == 0) {
                writer.flush();
                db.commit();
            }
        }
        Map<String, Long> rows = writer.close();
        moveSequencesOn();
        db.commit();
        db.setAutoCommit(auto);
        return rows;
    }

    private void clinicians(int count) throws SQLException {
        try (Batch accounts = new Batch(db, "account (id, version, user_name, full_name, display_name, password_hash, role, active, created_at)")) {
            for (int i = 0; i < count; i++) {
                clinicians.add(FIRST_ID + i);
                String name = START.get(i % START.size()) + "wright";
                String given = GIVEN.get(i % GIVEN.size());
                accounts.add(FIRST_ID + i, 0, "invented-" + i, given + " " + name, given.charAt(0) + ". " + name, "nobody signs in with this", "CLINICIAN",
                        true, OffsetDateTime.of(today.minusYears(YEARS).atStartOfDay(), ZoneOffset.UTC));
            }
        }
    }

    private void employers(int count) throws SQLException {
        try (Batch employers = new Batch(db, "employer (id, version, name, search_name)");
                Batch places = new Batch(db, "site (id, version, employer_id, name)")) {
            for (int i = 0; i < count; i++) {
                String name = START.get(i % START.size()) + PLACE_END.get(i / START.size() % PLACE_END.size()) + " Works " + (i + 1);
                employers.add(FIRST_ID + i, 0, name, name.toLowerCase(Locale.ROOT));
                employers.flush();
                for (int j = 0; j <= random.nextInt(3); j++) {
                    long site = FIRST_ID + i * 4L + j;
                    places.add(site, 0, FIRST_ID + i, List.of("Head office", "North hall", "Quay side").get(j));
                    sites.add(new long[] {FIRST_ID + i, site});
                }
            }
        }
    }

    private void person(InventedCase writer, long id, int number) throws SQLException {
        String given = GIVEN.get(random.nextInt(GIVEN.size()));
        String family = START.get(random.nextInt(START.size())) + END.get(random.nextInt(END.size()));
        long[] place = sites.get(random.nextInt(sites.size()));
        boolean employed = random.nextInt(20) > 0;
        writer.person(id, "INV-%07d".formatted(number + 1), given, family, today.minusYears(YEARS).minusDays(20L * 365 + random.nextInt(40 * 365)),
                employed ? place[0] : null, employed ? place[1] : null, employed && random.nextInt(5) > 0 ? DEPARTMENTS.get(random.nextInt(DEPARTMENTS.size())) : null,
                today.minusYears(YEARS).minusDays(1));
    }

    /** The sequences go on behind what was stored. */
    private void moveSequencesOn() throws SQLException {
        for (String table : List.of("account", "employer", "site", "patient", "case_file", "visit", "visit_note", "symptom_report", "region_symptom", "score", "work_status",
                "workplace_assessment", "workplace_finding", "case_link", "red_flag_screen")) {
            try (Statement statement = db.createStatement()) {
                long last;
                try (ResultSet row = statement.executeQuery("select coalesce(max(id), 0) from " + table)) {
                    row.next();
                    last = row.getLong(1);
                }
                statement.execute("alter sequence " + table + "_seq restart with " + (last + 1000));
            }
        }
    }

    /** Returns up to 400 of the cases that {@link #fill} stores for this number, spread over all of them. */
    public static long[] ids(int cases) {
        int step = Math.max(1, cases / 400);
        return LongStream.range(0, cases / step).map(i -> FIRST_ID + i * step).toArray();
    }

    /** Returns up to 400 of the open cases, spread over all of them: a closed one has no form to save. */
    public static long[] openIds(Connection db) throws SQLException {
        List<Long> open = new ArrayList<>();
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery("select id from case_file where closed_on is null order by id")) {
            while (rows.next()) {
                open.add(rows.getLong(1));
            }
        }
        int step = Math.max(1, open.size() / 400);
        return LongStream.range(0, open.size() / step).map(i -> open.get((int) i * step)).toArray();
    }

    /** Returns the addresses of the latest visits of open cases whose notes wait to be signed: a signed one has no form to save. */
    public static List<String> visitsToSave(Connection db) throws SQLException {
        List<String> visits = new ArrayList<>();
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery("select c.id, v.number from visit v join visit_note n on n.visit_id = v.id"
                + " join case_file c on c.id = v.case_file_id where n.signed_at is null and c.closed_on is null"
                + " and not exists (select 1 from visit later where later.case_file_id = c.id and later.visited_on > v.visited_on) order by c.id")) {
            while (rows.next()) {
                visits.add("/cases/" + rows.getLong(1) + "/visits/" + rows.getInt(2));
            }
        }
        return visits;
    }

    /** Returns the number of rows of a table, for checks. */
    public static long count(Connection db, String table) throws SQLException {
        try (PreparedStatement statement = db.prepareStatement("select count(*) from " + table); ResultSet row = statement.executeQuery()) {
            row.next();
            return row.getLong(1);
        }
    }
}
