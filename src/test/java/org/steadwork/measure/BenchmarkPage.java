package org.steadwork.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The page {@code docs/benchmarks.md}: each measurement replaces its own section and leaves the others as they are. */
public final class BenchmarkPage {

    private static final Path PAGE = Path.of("docs", "benchmarks.md");
    private static final String HEAD = """
            # Benchmarks

            Measured by `./mvnw -Pbench verify`, which writes every section anew; one alone by adding `-Dit.test=NameOfItsClass`.
            Each names its floor, measured in the same run, and the machine it ran on.
            """;

    private BenchmarkPage() {
    }

    /** Puts the section in place of the one of the same title, or at the end, and prints it. */
    public static void put(String title, String body) throws IOException {
        String heading = "## " + title + "\n";
        String section = heading + "\n" + body.strip() + "\n\n" + machine() + "\n";
        String page = Files.exists(PAGE) ? Files.readString(PAGE) : HEAD;
        int from = page.indexOf(heading);
        if (from < 0) {
            page = page.stripTrailing() + "\n\n" + section;
        } else {
            int next = page.indexOf("\n## ", from);
            page = page.substring(0, from) + section + (next < 0 ? "" : page.substring(next));
        }
        Files.writeString(PAGE, page);
        System.out.println(section);
    }

    private static String machine() throws IOException {
        String processor = Files.readAllLines(Path.of("/proc/cpuinfo")).stream().filter(line -> line.startsWith("model name")).findFirst()
                .map(line -> line.substring(line.indexOf(':') + 1).strip()).orElse("unknown processor");
        return "Machine: %s, %d processors, Java %s. Other programs ran beside it.".formatted(processor,
                Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"));
    }
}
