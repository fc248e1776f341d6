package org.steadwork.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.kernel.RefusedStartException;

/**
 * Where the database is and how it opens, as the settings say.
 *
 * @param folder   the data folder
 * @param name     the database's name in it
 * @param password what the driver gets; with a key of the file, that first
 */
public record DatabasePlace(String url, String user, String password, Path folder, String name, boolean sealed) {

    private static final String SOURCE = "quarkus.datasource.";
    private static final String H2_FILE = "jdbc:h2:file:";
    private static final String CIPHER = ";CIPHER=AES";
    /** H2 would keep refused statements, and the values in them, in a file beside the database. */
    private static final String TRACE_SETTING = ";TRACE_LEVEL_FILE=";
    private static final String NO_TRACE = TRACE_SETTING + "0";

    public static DatabasePlace from(Config config) {
        String url = config.getValue(SOURCE + "jdbc.url", String.class);
        String user = config.getOptionalValue(SOURCE + "username", String.class).orElse("");
        String password = config.getOptionalValue(SOURCE + "password", String.class).orElse("");
        if (!url.startsWith(H2_FILE)) {
            return new DatabasePlace(url, user, password, Path.of(config.getValue("steadwork.data-folder", String.class)), "", false);
        }
        // the address decides, should somebody have set one of their own
        Path file = Path.of(url.substring(H2_FILE.length()).replaceFirst(";.*", "")).toAbsolutePath().normalize();
        return new DatabasePlace(withoutTrace(url), user, password, file.getParent(), file.getFileName().toString(), false).with(DatabaseKey.from(config, "key"));
    }

    private static String withoutTrace(String url) {
        return url.toUpperCase(Locale.ROOT).contains(TRACE_SETTING) ? url : url + NO_TRACE;
    }

    DatabasePlace with(Optional<DatabaseKey> key) {
        return key.map(one -> new DatabasePlace(url.replace(CIPHER, "") + CIPHER, user, one.filePassword() + " ", folder, name, true)).orElse(this);
    }

    /** Returns another H2 database, in the same or another folder, that opens the same way. */
    public DatabasePlace at(Path otherFolder, String otherName) {
        int options = url.indexOf(';');
        return new DatabasePlace(H2_FILE + otherFolder.resolve(otherName).toAbsolutePath() + (options < 0 ? "" : url.substring(options)), user, password, otherFolder,
                otherName, sealed);
    }

    /** Tells the server how the file opens, and about the key, which stands in no command line and no file of its settings. */
    void hand() {
        if (h2File()) {
            System.setProperty(SOURCE + "jdbc.url", url);
        }
        if (sealed) {
            System.setProperty(SOURCE + "password", password);
        }
    }

    public boolean h2File() {
        return url.startsWith(H2_FILE);
    }

    /** Returns the file of an H2 database. */
    public Path file() {
        return folder.resolve(name + ".mv.db");
    }

    /** Returns where H2 would keep refused statements. */
    Path trace() {
        return folder.resolve(name + ".trace.db");
    }

    /** @throws RefusedStartException in words when it does not open */
    public Connection open() {
        try {
            return DriverManager.getConnection(url, user, password);
        } catch (SQLException e) {
            throw Troubles.opening(this, e);
        }
    }

    @Override
    public String toString() {
        return h2File() ? file().toString() : url.replaceAll("[?;].*", "");
    }
}
