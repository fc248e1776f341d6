package org.steadwork.caseload.statistics;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the cohorts kept beside the tests. */
final class Cohorts {

    private Cohorts() {
    }

    static List<Followed> group(String file, String group) {
        return rows(file).stream().filter(row -> row[0].equals(group))
                .map(row -> new Followed(Double.parseDouble(row[1]), row[2].equals("1"))).toList();
    }

    /** All rows of a file after its source and its heading. */
    static List<String[]> rows(String file) {
        try (var in = Cohorts.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(2).map(line -> line.split(",")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
