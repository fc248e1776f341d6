package org.steadwork.letter.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Measures the printing of a two-page letter with a drawing and a trend against the bare layout of the same XHTML by Flying Saucer,
 * and the memory over many letters ({@code -Dsteadwork.letters=10000} for the long run; 300 without). Not a test.
 */
public class LetterBench {

    private static final Instant MADE = Instant.parse("2030-12-16T09:10:00Z");
    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);
    private static final List<String> FACES = List.of("Regular", "Bold", "Italic", "BoldItalic");
    private static final int ROUNDS = 6;
    private static final int USUAL_LETTERS = 300;
    private static final int LOOKS = 10;

    /** The letter, made once. */
    @State(Scope.Benchmark)
    public static class Sample {

        String xhtml;
        String bare;

        /** The bare letter with its drawings as images, named by number. */
        String images;
        final Map<String, String> drawings = new LinkedHashMap<>();

        /** The product's faces, read once, as one who prints many letters would. */
        final ITextFontResolver faces = new ITextFontResolver();

        /** Puts the letter together; the bare layout gets its style sheet inside, since it has nowhere to look for one. */
        @Setup(Level.Trial)
        public void make() {
            xhtml = letter("<link rel=\"stylesheet\" type=\"text/css\" href=\"letter.css\"/>");
            bare = letter("<style type=\"text/css\">" + css() + "</style>");
            images = SVG.matcher(letter("<style type=\"text/css\">" + css().replace(".drawing svg", ".drawing img") + "</style>"))
                    .replaceAll(found -> "<img src=\"" + named(found.group()) + "\"/>");
            try {
                for (String face : FACES) {
                    faces.addFont("liberation/LiberationSans-" + face + ".ttf", "Liberation Sans", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, null);
                }
            } catch (IOException | DocumentException e) {
                throw new IllegalStateException(e);
            }
        }

        private String named(String svg) {
            String name = "drawing" + drawings.size() + ".svg";
            drawings.put(name, svg.contains("xmlns=") ? svg : svg.replaceFirst("<svg", "<svg xmlns=\"http://www.w3.org/2000/svg\""));
            return name;
        }
    }

    @Benchmark
    public int press(Sample sample) {
        return PdfPress.print(sample.xhtml, "Progress report, SW-0001/1", "T. Okoro-Vale", MADE).pages();
    }

    @Benchmark
    public int bareLayout(Sample sample) {
        return rendered(new ITextRenderer(), sample.bare);
    }

    @Benchmark
    public int bareLayoutWithFaces(Sample sample) {
        return rendered(new ITextRenderer(sample.faces), sample.bare);
    }

    @Benchmark
    public int bareLayoutWithFacesAndDrawings(Sample sample) {
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT, ITextRenderer.DEFAULT_DOTS_PER_PIXEL, device, sample.faces);
        renderer.getSharedContext().setReplacedElementFactory(new OrdinaryDrawings(device, sample.drawings));
        return rendered(renderer, sample.images);
    }

    @Test
    void aTwoPageLetterWithDrawingAndTrend() throws RunnerException, IOException {
        Sample sample = new Sample();
        sample.make();
        LetterPdf letter = PdfPress.print(sample.xhtml, "t", "a", MADE);
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        Collection<RunResult> results = new Runner(new OptionsBuilder().include("^" + LetterBench.class.getName().replace(".", "\\.") + "\\..*").forks(1)
                .warmupIterations(2).warmupTime(TimeValue.seconds(3)).measurementIterations(ROUNDS).measurementTime(TimeValue.seconds(2))
                .timeUnit(TimeUnit.SECONDS).jvmArgsAppend("-XX:TieredStopAtLevel=1").build()).run();
        double press = score(results, "press");
        double bare = score(results, "bareLayout");
        double faces = score(results, "bareLayoutWithFaces");
        double drawings = score(results, "bareLayoutWithFacesAndDrawings");
        BenchmarkPage.put("Letters", String.format(Locale.ROOT, """
                A letter of %d pages with a trend and a figure of an exercise as shapes, in one warm process started as README says
                (quick compiler alone), one thread (JMH, one fork, %d rounds of 2 s; the load of the machine was %.1f before).
                Three floors, each Flying Saucer %s alone on the same XHTML and style sheet, with nothing of the product:

                - **(a)** as the library comes: the reader program's own faces, nothing embedded, the two drawings left out;
                - **(a) with faces**: the product's four faces read once and embedded, the drawings left out;
                - **(b)** the same faces, and the same drawings as shapes in the library's usual way: images that Batik paints into a form.

                | | letters a second | ms a letter | letter as signed, times this |
                | --- | --- | --- | --- |
                | Letter as signed: PDF/A-1b, fonts embedded, drawings as shapes | %.1f | %.1f | |
                | Floor (a): bare layout of the same XHTML without its drawings | %.1f | %.1f | %.2f |
                | Floor (a) with the faces embedded | %.1f | %.1f | %.2f |
                | Floor (b): faces embedded, drawings as shapes | %.1f | %.1f | %.2f |

                Wanted: under 1.5 times the floor, and at least 20 a second. A letter has %d kB. %s""", letter.pages(), ROUNDS, load,
                ITextRenderer.class.getPackage().getImplementationVersion() == null ? "9.13.3" : ITextRenderer.class.getPackage().getImplementationVersion(),
                press, 1000 / press, bare, 1000 / bare, bare / press, faces, 1000 / faces, faces / press, drawings, 1000 / drawings, drawings / press,
                letter.bytes().length / 1000, memory(sample)));
    }

    private static double score(Collection<RunResult> results, String name) {
        return results.stream().filter(result -> result.getParams().getBenchmark().endsWith("." + name)).findFirst().orElseThrow().getPrimaryResult().getScore();
    }

    /** Prints letter after letter and looks ten times on the way at what stays in memory after a collection. */
    private static String memory(Sample sample) {
        int letters = Integer.getInteger("steadwork.letters", USUAL_LETTERS);
        StringBuilder looks = new StringBuilder();
        for (int i = 1; i <= letters; i++) {
            PdfPress.print(sample.xhtml, "Progress report, SW-0001/" + i, "T. Okoro-Vale", MADE);
            if (i % Math.max(1, letters / LOOKS) == 0) {
                looks.append(looks.isEmpty() ? "" : ", ").append(String.format(Locale.ROOT, "%.1f", used() / 1e6));
            }
        }
        return String.format(Locale.ROOT, "Memory in use after a collection, MB, each %d of %d letters: %s.", Math.max(1, letters / LOOKS), letters, looks);
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static int rendered(ITextRenderer renderer, String xhtml) {
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
