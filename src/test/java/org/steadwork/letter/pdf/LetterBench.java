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
    private static final String FIGURE = new ExerciseFigures().svg("sh_rolls", "", null).orElseThrow();
    private static final int ROUNDS = 6;
    private static final int USUAL_LETTERS = 300;
    private static final int LOOKS = 10;

    /** More letters, each with a trend of its own, than the press would remember shapes of. */
    private static final int LETTERS = 250;
    private static final String LINKED = "<link rel=\"stylesheet\" type=\"text/css\" href=\"letter.css\"/>";

    /** The letters, made once and taken in turn. */
    @State(Scope.Benchmark)
    public static class Sample {

        /** The product's faces, read once, as one who prints many letters would. */
        final ITextFontResolver faces = new ITextFontResolver();
        final Map<String, String> drawings = new LinkedHashMap<>();
        private final List<String> linked = new ArrayList<>();

        /** With the style sheet inside, since the bare layout has nowhere to look for one. */
        private final List<String> bare = new ArrayList<>();

        /** The bare letters with their drawings as images, named by number. */
        private final List<String> images = new ArrayList<>();
        private int turn;

        /** Puts the letters together. */
        @Setup(Level.Trial)
        public void make() {
            PdfPress.print(letter(LINKED, 0), "t", "a", MADE); // tells the C library to keep memory, for the floors as well: they would be slower without
            String sheet = "<style type=\"text/css\">" + css() + "</style>";
            for (int i = 0; i < LETTERS; i++) {
                linked.add(letter(LINKED, i));
                bare.add(letter(sheet, i));
                images.add(SVG.matcher(letter(sheet.replace(".drawing svg", ".drawing img"), i)).replaceAll(found -> "<img src=\"" + named(found.group()) + "\"/>"));
            }
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

        private String next(List<String> letters) {
            turn = (turn + 1) % LETTERS;
            return letters.get(turn);
        }
    }

    @Benchmark
    public int press(Sample sample) {
        return PdfPress.print(sample.next(sample.linked), "Progress report, SW-0001/1", "T. Okoro-Vale", MADE).pages();
    }

    @Benchmark
    public int bareLayout(Sample sample) {
        return rendered(new ITextRenderer(), sample.next(sample.bare));
    }

    @Benchmark
    public int bareLayoutWithFaces(Sample sample) {
        return rendered(new ITextRenderer(sample.faces), sample.next(sample.bare));
    }

    @Benchmark
    public int bareLayoutWithFacesAndDrawings(Sample sample) {
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT, ITextRenderer.DEFAULT_DOTS_PER_PIXEL, device, sample.faces);
        renderer.getSharedContext().setReplacedElementFactory(new OrdinaryDrawings(device, sample.drawings));
        return rendered(renderer, sample.next(sample.images));
    }

    @Test
    void aTwoPageLetterWithDrawingAndTrend() throws RunnerException, IOException {
        LetterPdf letter = PdfPress.print(letter(LINKED, 0), "t", "a", MADE);
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        Collection<RunResult> results = new Runner(new OptionsBuilder().include("^" + LetterBench.class.getName().replace(".", "\\.") + "\\..*").forks(1)
                .warmupIterations(2).warmupTime(TimeValue.seconds(3)).measurementIterations(ROUNDS).measurementTime(TimeValue.seconds(2))
                .timeUnit(TimeUnit.SECONDS).jvmArgsAppend("-XX:TieredStopAtLevel=1").build()).run();
        double press = score(results, "press");
        double bare = score(results, "bareLayout");
        double faces = score(results, "bareLayoutWithFaces");
        double drawings = score(results, "bareLayoutWithFacesAndDrawings");
        BenchmarkPage.put("Letters", String.format(Locale.ROOT, """
                A letter of %d pages with a trend, in each another one, and a figure of an exercise, in one warm process started as README
                says (quick compiler alone), one thread (JMH, one fork, %d rounds of 2 s; the load of the machine was %.1f before).
                Three floors, each Flying Saucer alone on the same XHTML and style sheet, with nothing of the product:

                - **(a)** as the library comes: the reader program's own faces, nothing embedded, the two drawings left out;
                - **(a) with faces**: the product's four faces read once and embedded, the drawings left out;
                - **(b)** the same faces, and the same drawings as shapes in the library's usual way: images that Batik paints into a form.

                (a) is the strictest, though no letter could go out so. What lies between (a) and (b) is the price of embedded faces and drawn
                shapes in the libraries' own hands. The floors, too, run after the press has told the C library to keep the memory of compressors, which
                makes them faster than they would be.

                | | letters a second | ms a letter | letter as signed, times this |
                | --- | --- | --- | --- |
                | Letter as signed: PDF/A-1b, fonts embedded, drawings as shapes | %.1f | %.1f | |
                | Floor (a): bare layout of the same XHTML without its drawings | %.1f | %.1f | %.2f |
                | Floor (a) with the faces embedded | %.1f | %.1f | %.2f |
                | Floor (b): faces embedded, drawings as shapes | %.1f | %.1f | %.2f |

                Wanted: under 1.5 times the floor, and at least 20 a second. A letter has %d kB. %s

                What made it so (before: 39.4 ms, 4.4 times (a)): drawings are written as PDF operators and not through Batik; they are taken out
                of the page before the layout, which sought style rules for each of their shapes; style sheets, colour profile and paths of figures are parsed
                once; words are measured by a table; streams are made small at the quickest level; and the press lets one large block of memory come
                and go at its start, after which glibc keeps what the compressors of OpenPDF give back (half of the time that was left then).""", letter.pages(), ROUNDS, load,
                press, 1000 / press, bare, 1000 / bare, bare / press, faces, 1000 / faces, faces / press, drawings, 1000 / drawings, drawings / press,
                letter.bytes().length / 1000, memory()));
    }

    private static double score(Collection<RunResult> results, String name) {
        return results.stream().filter(result -> result.getParams().getBenchmark().endsWith("." + name)).findFirst().orElseThrow().getPrimaryResult().getScore();
    }

    /** Draws and prints letter after letter and looks ten times on the way at what stays in memory after a collection. */
    private static String memory() {
        int letters = Integer.getInteger("steadwork.letters", USUAL_LETTERS);
        StringBuilder looks = new StringBuilder();
        for (int i = 1; i <= letters; i++) {
            PdfPress.print(letter(LINKED, i), "Progress report, SW-0001/" + i, "T. Okoro-Vale", MADE);
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

    /** @param number makes the trend another one */
    private static String letter(String style, int number) {
        List<Trend.Visit> visits = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            visits.add(new Trend.Visit(LocalDate.of(2030, 3, 4).plusWeeks(2L * i).plusDays(i % 2 == 0 ? 0 : number % 9), 46.0 + number % 40 - (5 + number % 7 * 0.1) * i));
        }
        String trend = TrendChart.draw(new Trend("odi", "Back disability", "%", 0, 100, true, 0, visits, 10.5, 12.0), TrendSize.MIDDLE);
        String paragraph = "<h2>Then and now</h2><p>She reports that lifting and sitting became easier; measured, the change is larger than measurement error. "
                + "Whether and which tests are needed is a matter of medical judgement.</p><ul><li>Oswestry Disability Index: 46 % on 4 March 2030, 16 % on "
                + "27 May 2030.</li><li>Patient-specific functional scale: 3.7, then 6.3.</li></ul>";
        return "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>Progress report</title>" + style + "</head><body><div class=\"letterhead\"><b>Clinic</b><br/>"
                + "Address</div><div class=\"foot\">For the reader named above only.</div><p class=\"to\">Dr Q. Quill<br/>Alder Practice</p><h1>Progress report</h1>"
                + paragraph.repeat(7) + "<div class=\"drawing\">" + trend + "</div><div class=\"drawing\">" + FIGURE + "</div><p class=\"signature\">Signed</p></body></html>";
    }

    private static String css() {
        try (InputStream in = LetterBench.class.getClassLoader().getResourceAsStream("templates/letter/letter.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
