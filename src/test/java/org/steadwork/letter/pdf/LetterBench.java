package org.steadwork.letter.pdf;

import com.lowagie.text.DocumentException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.steadwork.drawing.Trend;
import org.steadwork.drawing.TrendChart;
import org.steadwork.drawing.TrendSize;
import org.steadwork.exercise.ExerciseFigures;
import org.steadwork.measure.BenchmarkPage;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Measures the printing of a two-page letter with a drawing and a trend against the bare layout of the same XHTML by Flying Saucer,
 * and the memory over many letters ({@code -Dsteadwork.letters=10000} for the long run; 300 without). Not a test.
 */
public class LetterBench {

    private static final Instant MADE = Instant.parse("2030-12-16T09:10:00Z");
    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);
    private static final int ROUNDS = 6;
    private static final int USUAL_LETTERS = 300;

    /** The letter, made once. */
    @State(Scope.Benchmark)
    public static class Sample {

        String xhtml;
        String bare;

        /** The bare letter with its drawings as files, which is how Flying Saucer takes SVG. */
        String pictures;

        /** Puts the letter together; the bare layout gets its style sheet inside, since it has nowhere to look for one. */
        @Setup(Level.Trial)
        public void make() {
            xhtml = letter("<link rel=\"stylesheet\" type=\"text/css\" href=\"letter.css\"/>");
            bare = letter("<style type=\"text/css\">" + css() + "</style>");
            pictures = SVG.matcher(letter("<style type=\"text/css\">" + css().replace(".drawing svg", ".drawing img") + "</style>"))
                    .replaceAll(found -> "<img src=\"" + file(found.group()) + "\"/>");
        }
    }

    @Benchmark
    public int press(Sample sample) {
        return PdfPress.print(sample.xhtml, "Progress report, SW-0001/1", "T. Okoro-Vale", MADE).pages();
    }

    @Benchmark
    public int bareLayout(Sample sample) {
        return bare(sample.bare);
    }

    @Test
    void aTwoPageLetterWithDrawingAndTrend() throws RunnerException, IOException {
        Sample sample = new Sample();
        sample.make();
        int pages = PdfPress.print(sample.xhtml, "t", "a", MADE).pages();
        Collection<RunResult> results = new Runner(new OptionsBuilder().include("^" + LetterBench.class.getName().replace(".", "\\.") + "\\..*").forks(1)
                .warmupIterations(2).warmupTime(TimeValue.seconds(3)).measurementIterations(ROUNDS).measurementTime(TimeValue.seconds(2))
                .timeUnit(TimeUnit.SECONDS).jvmArgsAppend("-XX:TieredStopAtLevel=1").build()).run();
        double press = score(results, "press");
        double bare = score(results, "bareLayout");
        long began = System.nanoTime();
        bare(sample.pictures);
        double pictures = (System.nanoTime() - began) / 1e9;
        BenchmarkPage.put("Letters", String.format(Locale.ROOT, """
                A letter of %d pages with a trend and a figure of an exercise as shapes, in one warm process started as README says
                (quick compiler alone), one thread (JMH, one fork, %d rounds of
                2 s). The floor is Flying Saucer alone on the same XHTML and style sheet: no PDF/A, no embedded fonts, and the two drawings left
                out. It can draw them too, from files, as large bitmaps: one such letter took %.1f s.

                | | letters a second | ms a letter |
                | --- | --- | --- |
                | Letter as signed: PDF/A-1b, fonts embedded, drawings as shapes | %.1f | %.1f |
                | Floor: bare layout of the same XHTML without its drawings | %.1f | %.1f |

                That is %.2f times the floor (wanted: under 1.5, and at least 20 a second). %s""", pages, ROUNDS, pictures, press, 1000 / press,
                bare, 1000 / bare, bare / press, memory(sample)));
    }

    private static URI file(String svg) {
        try {
            Path file = Files.createTempFile("drawing", ".svg");
            file.toFile().deleteOnExit();
            String space = svg.contains("xmlns=") ? "" : " xmlns=\"http://www.w3.org/2000/svg\"";
            return Files.writeString(file, svg.replaceFirst("<svg", "<svg" + space)).toUri();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double score(Collection<RunResult> results, String name) {
        return results.stream().filter(result -> result.getParams().getBenchmark().endsWith("." + name)).findFirst().orElseThrow().getPrimaryResult().getScore();
    }

    /** Prints letter after letter and looks at what stays in memory after a collection, at a tenth of the way and at the end. */
    private static String memory(Sample sample) {
        int letters = Integer.getInteger("steadwork.letters", USUAL_LETTERS);
        long early = 0;
        long bytes = 0;
        for (int i = 1; i <= letters; i++) {
            bytes += PdfPress.print(sample.xhtml, "Progress report, SW-0001/" + i, "T. Okoro-Vale", MADE).bytes().length;
            if (i == Math.max(1, letters / 10)) {
                early = used();
            }
        }
        return String.format(Locale.ROOT, "Memory in use after a collection: %.1f MB after %d letters, %.1f MB after %d (%d kB a letter).",
                early / 1e6, Math.max(1, letters / 10), used() / 1e6, letters, bytes / letters / 1000);
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static int bare(String xhtml) {
        ITextRenderer renderer = new ITextRenderer();
        renderer.setDocumentFromString(xhtml);
        renderer.layout();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            renderer.createPDF(out);
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
        return out.size();
    }

    private static String letter(String style) {
        List<Trend.Visit> visits = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            visits.add(new Trend.Visit(LocalDate.of(2030, 3, 4).plusWeeks(2L * i), 46.0 - 5 * i));
        }
        String trend = TrendChart.draw(new Trend("odi", "Back disability", "%", 0, 100, true, 0, visits, 10.5, 12.0), TrendSize.MIDDLE);
        String figure = new ExerciseFigures().svg("sh_rolls", "", null).orElseThrow();
        String paragraph = "<h2>Then and now</h2><p>She reports that lifting and sitting became easier; measured, the change is larger than measurement error. "
                + "Whether and which tests are needed is a matter of medical judgement.</p><ul><li>Oswestry Disability Index: 46 % on 4 March 2030, 16 % on "
                + "27 May 2030.</li><li>Patient-specific functional scale: 3.7, then 6.3.</li></ul>";
        return "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>Progress report</title>" + style + "</head><body><div class=\"letterhead\"><b>Clinic</b><br/>"
                + "Address</div><div class=\"foot\">For the reader named above only.</div><p class=\"to\">Dr Q. Quill<br/>Alder Practice</p><h1>Progress report</h1>"
                + paragraph.repeat(7) + "<div class=\"drawing\">" + trend + "</div><div class=\"drawing\">" + figure + "</div><p class=\"signature\">Signed</p></body></html>";
    }

    private static String css() {
        try (InputStream in = LetterBench.class.getClassLoader().getResourceAsStream("templates/letter/letter.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
