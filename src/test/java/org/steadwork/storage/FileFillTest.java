package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileFillTest {

    @TempDir
    Path folder;

    @Test
    void aLargeFileOfWhichLessThanHalfIsUsedIsWasteful() {
        assertTrue(new FileFill(16_000_001, 70, 71).wasteful());
        assertFalse(new FileFill(16_000_001, 71, 71).wasteful(), "just over half");
        assertFalse(new FileFill(16_000_000, 1, 1).wasteful(), "a small file");
    }

    /** A process that never ends normally leaves what it overwrote in the file; H2 itself says how much. */
    @Test
    void overwrittenRowsMakeAFileWastefulUntilItIsClosed() throws Exception {
        Path file = folder.resolve("filled.mv.db");
        try (Connection db = open(); Statement sql = db.createStatement()) {
            sql.execute("create table note (id int primary key, words varchar)");
            for (int round = 0; round < 30; round++) {
                sql.execute("merge into note select x, random_uuid() || repeat(random_uuid(), 20) from system_range(1, 2000)");
                sql.execute("checkpoint sync");
            }
            FileFill before = FileFill.of(db);
            assertEquals(Files.size(file), before.bytes());
            assertTrue(before.wasteful(), before.toString());
        }
        try (Connection db = open()) {
            FileFill after = FileFill.of(db);
            assertFalse(after.wasteful(), after.toString());
        }
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("filled") + ";WRITE_DELAY=0;MAX_COMPACT_TIME=3000");
    }
}
