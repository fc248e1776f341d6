package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.h2.tools.ChangeFileEncryption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.backup.SmallClinic;
import org.steadwork.measure.BenchmarkPage;

/** How large the H2 file grows in a year of clinic days with every save forced to the disk, and how much of that is more than the data. */
class GrowthBench {

    /** As in {@code steadwork.file-url}. */
    private static final String AS_THE_PROGRAM_WRITES = ";COMPRESS=TRUE;MAX_COMPACT_TIME=3000";
    private static final int DAYS = 250;
    private static final int SAVES_A_DAY = 160;
    private static final List<String> WORDS = language();
    private static final String KEY = "a database key for this measure alone, 32 and more";

    @TempDir
    Path folder;

    private final Random random = new Random(20301130);
    private long next = 1_000_000;

    @Test
    void aYearOfDays() throws Exception {
        Figures plain = year("plain", AS_THE_PROGRAM_WRITES, "");
        Figures sealed = year("sealed", ";CIPHER=AES" + AS_THE_PROGRAM_WRITES, DatabaseKey.of(KEY).filePassword() + " ");
        for (Figures one : new Figures[]{plain, sealed}) {
            assertTrue(one.atNight() < 2.0 * one.compacted() + 8_000_000, "the file is " + one.atNight() + " bytes for " + one.compacted() + " of data");
        }
        BenchmarkPage.put("File growth", String.format(Locale.ROOT, """
                A year of %d clinic days, %d saves a day, each of four rows (the changed one, its revision and state, the audit entry) in a transaction of its own
                that is forced to the disk (`WRITE_DELAY=0`); the program is started in the morning and ended at night. Floor: the same data
                compacted (`SHUTDOWN COMPACT`).

                | | largest during a day, MB | at night, MB | compacted, MB | ratio at night | saves a second |
                | --- | --- | --- | --- | --- | --- |
                | plain | %s |
                | sealed (AES) | %s |""", DAYS, SAVES_A_DAY, plain.row(), sealed.row()));
    }

    private record Figures(long largest, long atNight, long compacted, double savesASecond) {

        String row() {
            return String.format(Locale.ROOT, "%.1f | %.1f | %.1f | %.2f | %.0f", largest / 1e6, atNight / 1e6, compacted / 1e6, (double) atNight / compacted, savesASecond);
        }
    }

    private Figures year(String name, String more, String password) throws SQLException, IOException {
        String url = SmallClinic.url(folder, name);
        SmallClinic.make(url, 200);
        if (more.contains("CIPHER")) {
            ChangeFileEncryption.execute(folder.toString(), name, "AES", null, password.strip().toCharArray(), true);
        }
        Path file = folder.resolve(name + ".mv.db");
        long largest = 0;
        long nanos = 0;
        for (int day = 0; day < DAYS; day++) {
            try (Connection db = DriverManager.getConnection(url + more, "", password)) {
                db.setAutoCommit(false);
                long begun = System.nanoTime();
                for (int save = 0; save < SAVES_A_DAY; save++) {
                    save(db);
                }
                nanos += System.nanoTime() - begun;
                largest = Math.max(largest, Files.size(file));
            }
        }
        long atNight = Files.size(file);
        try (Connection db = DriverManager.getConnection(url + more, "", password)) {
            db.createStatement().execute("shutdown compact");
        }
        return new Figures(largest, atNight, Files.size(file), DAYS * SAVES_A_DAY / (nanos / 1e9));
    }

    private void save(Connection db) throws SQLException {
        long id = next++;
        long file = 1 + random.nextInt(200);
        OffsetDateTime now = OffsetDateTime.ofInstant(Instant.EPOCH.plusSeconds(id), ZoneOffset.UTC);
        String words = note();
        try (PreparedStatement change = db.prepareStatement("update case_file set history = ?, version = version + 1 where id = ?");
                PreparedStatement revision = db.prepareStatement("insert into revision (id, made_at, author) values (?, 0, 'M. Invented')");
                PreparedStatement history = db.prepareStatement("insert into case_file_history (id, revision, revision_kind, history) values (?, ?, 1, ?)");
                PreparedStatement audit = db.prepareStatement("insert into audit_event (id, happened_at, actor, action) values (?, ?, 'M. Invented', 'changed case details')")) {
            change.setString(1, words);
            change.setLong(2, file);
            change.execute();
            revision.setLong(1, id);
            revision.execute();
            history.setLong(1, file);
            history.setLong(2, id);
            history.setString(3, words);
            history.execute();
            audit.setLong(1, id);
            audit.setObject(2, now);
            audit.execute();
            db.commit();
        }
    }

    /** Ten to 130 words of a language of 3,000, the short ones oftener: packs about as well as a real note, not like one sentence again and again. */
    private String note() {
        return random.ints(10 + random.nextInt(120), 0, 3_000 * 3_000).mapToObj(drawn -> WORDS.get((int) Math.sqrt(drawn))).collect(Collectors.joining(" "));
    }

    private static List<String> language() {
        Random letters = new Random(1);
        return Stream.generate(() -> letters.ints(2 + letters.nextInt(9), 'a', 'z' + 1).mapToObj(Character::toString).collect(Collectors.joining()))
                .limit(3_000).sorted(Comparator.comparingInt(String::length).reversed()).toList();
    }
}
