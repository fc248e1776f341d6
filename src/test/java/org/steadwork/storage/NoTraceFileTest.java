package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfig;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.kernel.RefusedStartException;

/** H2 keeps no file of refused statements: what it refuses holds what somebody typed into a record. */
class NoTraceFileTest {

    private static final String URL = "quarkus.datasource.jdbc.url";
    private static final String KEY = "a key of this test alone, 32 and more letters";

    @TempDir
    Path folder;

    @AfterEach
    void forget() {
        System.clearProperty(URL);
        System.clearProperty("quarkus.datasource.password");
    }

    /** The check on the test itself: without the setting H2 does write the file, value and all. */
    @Test
    void withoutTheSettingAFileWouldBeWritten() throws Exception {
        refuse(DriverManager.getConnection("jdbc:h2:file:" + folder + "/bare"));
        assertTrue(Files.readString(folder.resolve("bare.trace.db")).contains("Quillback"));
    }

    @Test
    void asDeliveredNoneIsWritten() throws Exception {
        refuse(DatabasePlace.from(config(delivered(), Map.of("steadwork.data-folder", folder.toString()))).open());
        assertEquals(List.of("clinic.mv.db"), files());
    }

    @Test
    void anAddressOfOnesOwnGetsTheSettingToo() throws Exception {
        DatabasePlace place = DatabasePlace.from(config(Map.of(URL, "jdbc:h2:file:" + folder + "/own;MODE=PostgreSQL")));
        refuse(place.open());
        assertThrows(RefusedStartException.class, () -> new DatabasePlace(place.url(), "stranger", "wrong", folder, "own", false).open());
        assertEquals(List.of("own.mv.db"), files());
    }

    /** What the server gets is what was checked, sealed or not; a file of before is removed. */
    @Test
    void theStartRemovesWhatAnEarlierVersionLeftAndHandsTheSettingOn() throws Exception {
        for (Map<String, String> key : List.of(Map.<String, String>of(), Map.of("steadwork.database.key", KEY))) {
            String name = key.isEmpty() ? "open" : "sealed";
            Files.writeString(folder.resolve(name + ".trace.db"), "Quillback");
            StartCheck.run(config(key, Map.of(URL, "jdbc:h2:file:" + folder + "/" + name, "steadwork.data-folder", folder.toString())));
            assertFalse(Files.exists(folder.resolve(name + ".trace.db")));
            refuse(DriverManager.getConnection(System.getProperty(URL), "", System.getProperty("quarkus.datasource.password", "")));
            assertFalse(Files.exists(folder.resolve(name + ".trace.db")), name);
        }
    }

    private static void refuse(Connection open) throws SQLException {
        try (Connection db = open; Statement sql = db.createStatement()) {
            sql.execute("create table person (name varchar(3))");
            assertThrows(SQLException.class, () -> sql.execute("insert into person values ('Quillback')"));
            assertThrows(SQLException.class, () -> sql.execute("insert into persons values ('Quillback')"));
        }
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static Map<String, String> delivered() throws IOException {
        Properties read = new Properties();
        try (InputStream in = NoTraceFileTest.class.getResourceAsStream("/application.properties")) {
            read.load(in);
        }
        return Map.of(URL, read.getProperty(URL), "steadwork.file-url", read.getProperty("steadwork.file-url"), "steadwork.database", read.getProperty("steadwork.database"));
    }

    @SafeVarargs
    private static Config config(Map<String, String>... settings) {
        SmallRyeConfigBuilder builder = new SmallRyeConfigBuilder().addDefaultInterceptors();
        for (Map<String, String> some : settings) {
            builder.withSources(new PropertiesConfigSource(some, "test", 100));
        }
        SmallRyeConfig config = builder.build();
        return config;
    }
}
