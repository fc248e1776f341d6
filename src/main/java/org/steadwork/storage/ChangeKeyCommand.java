package org.steadwork.storage;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.h2.tools.ChangeFileEncryption;
import org.steadwork.kernel.RefusedStartException;

/**
 * The command {@code change-database-key}: seals the H2 file under {@code steadwork.database.new-key(-file)}, or with the word {@code none}
 * opens it for good. It works on a copy, opens that, and only then puts it in the place of the file.
 */
public final class ChangeKeyCommand {

    private ChangeKeyCommand() {
    }

    /** @throws RefusedStartException in words; the database is as it was then */
    public static int run(Config config, List<String> words, PrintStream out) {
        boolean open = words.equals(List.of("none"));
        Optional<DatabaseKey> present = DatabaseKey.from(config, "key");
        Optional<DatabaseKey> wanted = open ? Optional.empty() : DatabaseKey.from(config, "new-key");
        DatabasePlace place = DatabasePlace.from(config);
        if (!words.isEmpty() && !open || !open && wanted.isEmpty()) {
            throw new RefusedStartException("change-database-key needs the new key in steadwork.database.new-key-file (or STEADWORK_DATABASE_NEW_KEY), or the word none"
                    + " to take the seal off. Nothing was changed.");
        }
        if (!place.h2File() || !Files.exists(place.file())) {
            throw new RefusedStartException("There is no H2 database at " + place + " to change the key of.");
        }
        StartCheck.run(config); // opens it with the present key, and so makes sure that nobody else has it open
        Path workshop = place.folder().resolve("changing-key");
        try {
            empty(workshop);
            Files.createDirectories(workshop);
            Path copy = workshop.resolve(place.file().getFileName());
            Files.copy(place.file(), copy);
            ChangeFileEncryption.execute(workshop.toString(), place.name(), "AES", password(present), password(wanted), true);
            verify(place, workshop, wanted);
            Files.move(copy, place.file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            empty(workshop);
        } catch (IOException | SQLException e) {
            throw new RefusedStartException("The key could not be changed (" + e.getMessage() + "). The database is as it was.", e);
        }
        out.println(open ? place + " is no longer sealed." : place + " is sealed under the new key. Keep the old one as long as you keep copies made under it.");
        return 0;
    }

    private static char[] password(Optional<DatabaseKey> key) {
        return key.map(one -> one.filePassword().toCharArray()).orElse(null);
    }

    private static void verify(DatabasePlace place, Path workshop, Optional<DatabaseKey> key) throws SQLException {
        String plain = place.url().replace(";CIPHER=AES", "");
        DatabasePlace changed = new DatabasePlace(plain, place.user(), "", place.folder(), place.name(), false).at(workshop, place.name()).with(key);
        try (Connection db = changed.open()) {
            SchemaVersion.of(db).orElseThrow(() -> new SQLException("the copy does not read back"));
        }
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
