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
    private static final String H2 = "jdbc:h2:";
    private static final String H2_FILE = H2 + "file:";
    private static final String POSTGRESQL = "jdbc:postgresql:";
    private static final String READ_ONLY = ";ACCESS_MODE_DATA=r";
    private static final String CIPHER = ";CIPHER=AES";
    /** H2 would keep refused statements, and the values in them, in a file beside the database. */
    private static final String TRACE_SETTING = ";TRACE_LEVEL_FILE=";
    private static final String NO_TRACE = TRACE_SETTING + "0";

    /** @throws RefusedStartException when the address is not one of the kind of database that this program was built for */
    public static DatabasePlace from(Config config) {
        String url = config.getValue(SOURCE + "jdbc.url", String.class).strip();
        requireKind(config.getOptionalValue("steadwork.database-kind", String.class).orElse("h2"), url);
        String user = config.getOptionalValue(SOURCE + "username", String.class).orElse("");
        String password = config.getOptionalValue(SOURCE + "password", String.class).orElse("");
        if (!url.startsWith(H2_FILE)) {
            return new DatabasePlace(ServerUrl.named(url), user, password, Path.of(config.getValue("steadwork.data-folder", String.class)), "", false);
        }
        return h2(config, url, user, password);
    }

    /** Returns the H2 file of the data folder, whatever this program was built for; it opens for reading alone, and not while a clinic runs on it. */
    public static DatabasePlace ofFile(Config config) {
        return h2(config, config.getValue("steadwork.file-url", String.class) + READ_ONLY, "", "");
    }

    private static DatabasePlace h2(Config config, String url, String user, String password) {
        // the address decides, should somebody have set one of their own
        Path file = Path.of(url.substring(H2_FILE.length()).replaceFirst(";.*", "")).toAbsolutePath().normalize();
        return new DatabasePlace(withoutTrace(url), user, password, file.getParent(), file.getFileName().toString(), false).with(DatabaseKey.from(config, "key"));
    }

    private static String withoutTrace(String url) {
        return url.toUpperCase(Locale.ROOT).contains(TRACE_SETTING) ? url : url + NO_TRACE;
    }

    private static void requireKind(String kind, String url) {
        if (kind.equals("postgresql") && !url.startsWith(POSTGRESQL)) {
            throw new RefusedStartException((url.startsWith(H2) ? "No database is named." : "The address of the database does not begin with " + POSTGRESQL + "//.")
                    + " This Steadwork works on PostgreSQL: set QUARKUS_DATASOURCE_JDBC_URL, such as jdbc:postgresql://host/clinic, QUARKUS_DATASOURCE_USERNAME and"
                    + " QUARKUS_DATASOURCE_PASSWORD in the environment, or quarkus.datasource.jdbc.url, username and password. Nothing was changed.");
        }
        if (kind.equals("h2") && url.startsWith(POSTGRESQL)) {
            throw new RefusedStartException("This Steadwork keeps its records in a file of its own, and was told of a PostgreSQL database. Use the one that is built for it:"
                    + " docs/scaling.md says how. Nothing was changed.");
        }
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

    /**
     * Tells the server how the file opens, and about the key, which stands in no command line and no file of its settings; on PostgreSQL about
     * the bounds of its statements.
     */
    void hand(Config config) {
        if (h2File()) {
            System.setProperty(SOURCE + "jdbc.url", url);
        }
        if (sealed) {
            System.setProperty(SOURCE + "password", password);
        } else if (postgresql()) {
            System.setProperty(SOURCE + "jdbc.url", ServerUrl.bounded(url, config));
        }
    }

    public boolean postgresql() {
        return url.startsWith(POSTGRESQL);
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
