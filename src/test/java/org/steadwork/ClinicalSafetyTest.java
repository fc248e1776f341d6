package org.steadwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The hazard log names tests that exist, in rows that are whole, with figures that are what they say. */
class ClinicalSafetyTest {

    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w+(?:Test|IT|Contract))(?:\\.(\\w+))?`");
    private static final Pattern RISK = Pattern.compile("(\\d) × (\\d) = (\\d+)");
    private static final int FEWEST = 25;

    @Test
    void everyTestNamedThereExists() throws IOException {
        Map<String, String> sources = sources();
        Set<String> missing = new TreeSet<>();
        Matcher named = NAMED.matcher(log());
        int found = 0;
        while (named.find()) {
            found++;
            String source = sources.get(named.group(1));
            if (source == null || named.group(2) != null && !source.matches("(?s).*@(Parameterized)?Test\\b.*\\bvoid " + named.group(2) + "\\(.*")) {
                missing.add(named.group());
            }
        }
        assertEquals(Set.of(), missing);
        assertTrue(found > 60, "only " + found + " tests are named");
    }

    @Test
    void everyHazardHasAControlAProofAndWhatIsLeft() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        for (String line : log().lines().filter(one -> one.matches("\\| H\\d+ \\|.*")).toList()) {
            String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
            numbers.add(cells[0]);
            if (cells.length != 9 || Stream.of(cells).anyMatch(String::isBlank) || !NAMED.matcher(cells[6]).find()) {
                wrong.add(cells[0] + " is not whole");
                continue;
            }
            int before = risk(cells[4]);
            int after = risk(cells[7]);
            if (before < after || after < 1) {
                wrong.add(cells[0] + " goes from " + before + " to " + after);
            }
            if (after >= 10 && !log().substring(log().indexOf("## Taken with a reason")).contains(cells[0])) {
                wrong.add(cells[0] + " is left at " + after + " without a reason");
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(numbers, numbers.stream().distinct().sorted().toList());
        assertTrue(numbers.size() >= FEWEST, "only " + numbers.size());
    }

    private static int risk(String cell) {
        Matcher risk = RISK.matcher(cell);
        return risk.matches() && Integer.parseInt(risk.group(1)) * Integer.parseInt(risk.group(2)) == Integer.parseInt(risk.group(3)) ? Integer.parseInt(risk.group(3)) : -1;
    }

    private static String log() throws IOException {
        return Files.readString(Path.of("docs/clinical-safety.md"));
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new LinkedHashMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
            }
        }
        return sources;
    }
}
