package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;

/** A clinic in a database file, as a real one is, in a new folder. */
public class CaseloadOnDisk implements QuarkusTestProfile {

    static final Path FOLDER = Path.of("target", "caseload-bench");

    @Override
    public Map<String, String> getConfigOverrides() {
        try {
            if (Files.exists(FOLDER)) {
                try (Stream<Path> old = Files.walk(FOLDER)) {
                    old.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
                }
            }
            Files.createDirectories(FOLDER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.of("quarkus.datasource.jdbc.url", "jdbc:h2:file:./" + FOLDER + "/clinic;WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH");
    }
}
