package org.steadwork.journey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.Test;
import org.steadwork.measure.BenchmarkPage;

/**
 * Measures the packaged application: from the start of the process to the first page in hand, and the memory it then holds.
 * Not a test: it is run by {@code ./mvnw -Pbench verify} and writes {@code docs/benchmarks.md}.
 */
class StartBench {

    private static final int STARTS = 7;
    private static final int PAGES = 300;

    private record Start(long firstPageMillis, long restMegabytes, long usedMegabytes) {
    }

    @Test
    void startToFirstPageAndMemory() throws IOException {
        List<Start> empty = measure(Map.of());
        List<Start> demo = measure(Map.of("quarkus.profile", "demo"));
        BenchmarkPage.put("Start and memory", """
                The packaged application is started %d times as README says (`java @start.options -jar …`) on a data folder of its own (the demo on one where its cases are loaded already); the median is
                given, with the fastest and the slowest in brackets. "First page" runs from the start of the process to the whole sign-in page in hand. Resident memory
                is `VmRSS` of the process after that page, and again after %d pages.

                | | first page, s | resident then, MB | resident after %d pages, MB |
                | --- | --- | --- | --- |
                %s%s""".formatted(STARTS, PAGES, PAGES, row("Empty clinic", empty), row("Demo clinic", demo)));
    }

    private static List<Start> measure(Map<String, String> settings) throws IOException {
        Path folder = Files.createTempDirectory("steadwork-bench");
        List<Start> starts = new ArrayList<>();
        for (int i = 0; i <= STARTS; i++) {
            long began = System.nanoTime();
            try (PackagedApplication application = PackagedApplication.startKeeping(folder, settings)) {
                Guest guest = new Guest(application.address());
                guest.open("/sign-in").expect(200);
                long firstPage = (System.nanoTime() - began) / 1_000_000;
                long rest = residentMegabytes(application.pid());
                for (int page = 1; page < PAGES; page++) {
                    guest.open("/sign-in").expect(200);
                }
                if (i > 0) { // the first start makes the database
                    starts.add(new Start(firstPage, rest, residentMegabytes(application.pid())));
                }
            }
        }
        return starts;
    }

    private static long residentMegabytes(long pid) throws IOException {
        String line = Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status")).stream().filter(l -> l.startsWith("VmRSS"))
                .findFirst().orElseThrow();
        return Math.round(Long.parseLong(line.replaceAll("\\D", "")) / 1024.0);
    }

    private static String row(String name, List<Start> starts) {
        return "| %s | %s | %s | %s |%n".formatted(name, spread(starts, Start::firstPageMillis, 1000), spread(starts, Start::restMegabytes, 1),
                spread(starts, Start::usedMegabytes, 1));
    }

    private static String spread(List<Start> starts, ToLongFunction<Start> value, int unit) {
        List<Long> sorted = starts.stream().map(value::applyAsLong).sorted().toList();
        String form = unit == 1 ? "%.0f (%.0f to %.0f)" : "%.2f (%.2f to %.2f)";
        return String.format(Locale.ROOT, form, sorted.get(sorted.size() / 2) / (double) unit, sorted.get(0) / (double) unit,
                sorted.get(sorted.size() - 1) / (double) unit);
    }
}
