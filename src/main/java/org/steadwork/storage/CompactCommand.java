package org.steadwork.storage;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.config.Config;
import org.steadwork.kernel.RefusedStartException;

/**
 * The command {@code compact}: writes the H2 file anew with what is in it alone, as after a bulk load, which leaves most of the file unused and
 * what belongs together scattered. H2 writes a second file beside it and changes them at the end, so a kill in between loses nothing.
 */
public final class CompactCommand {

    private CompactCommand() {
    }

    /** @throws RefusedStartException in words; the database is as it was then */
    public static int run(Config config, List<String> words, PrintStream out) {
        if (!words.isEmpty()) {
            throw new RefusedStartException("compact takes nothing else. Nothing was changed.");
        }
        DatabasePlace place = DatabasePlace.from(config);
        if (place.postgresql()) {
            throw new RefusedStartException("PostgreSQL keeps its files small itself (autovacuum); compact is for the H2 file. Nothing was changed.");
        }
        if (!Files.exists(place.file())) {
            throw new RefusedStartException("There is no H2 database at " + place + " to compact.");
        }
        StartCheck.run(config); // makes sure that nobody else has it open
        try {
            long before = Files.size(place.file());
            requireRoom(place.folder(), before);
            try (Connection db = place.open(); Statement sql = db.createStatement()) {
                sql.execute("analyze"); // how the tables are read is planned by what is known of them
                sql.execute("shutdown compact");
            }
            out.printf(Locale.ROOT, "%s has %.1f MB, and had %.1f MB.%n", place, Files.size(place.file()) / 1e6, before / 1e6);
            return 0;
        } catch (IOException | SQLException e) {
            throw new RefusedStartException("The file could not be compacted (" + e.getMessage() + "). What is in it is as it was.", e);
        }
    }

    /** The second file may become as large as the first. */
    private static void requireRoom(Path folder, long needed) throws IOException {
        long free = Files.getFileStore(folder).getUsableSpace();
        if (free < needed) {
            throw new RefusedStartException(String.format(Locale.ROOT, "The disk of %s has %.0f MB left; compacting may need %.0f for a second file. Make room. Nothing was changed.",
                    folder, free / 1e6, needed / 1e6));
        }
    }
}
