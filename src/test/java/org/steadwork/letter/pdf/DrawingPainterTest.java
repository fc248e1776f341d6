package org.steadwork.letter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steadwork.drawing.PlanMark;
import org.steadwork.drawing.Trend;
import org.steadwork.drawing.TrendChart;
import org.steadwork.drawing.TrendSize;
import org.steadwork.drawing.desk.DeskCard;
import org.steadwork.drawing.desk.DeskView;
import org.steadwork.drawing.desk.Show;
import org.steadwork.drawing.desk.WorkedScenes;
import org.steadwork.exercise.ExerciseFigures;
import org.steadwork.exercise.dayplan.Range;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Every drawing letters can hold is plain, and is painted as Batik, a general-purpose renderer of SVG, paints it. */
@Tag("longer")
class DrawingPainterTest {

    private static final String HEAD = "<html><head><title>t</title><link rel=\"stylesheet\" href=\"letter.css\"/></head><body>";
    private static final float SCALE = 2;
    private static final int FAR = 96;

    /** Share of pixels that may be far off: edges are smoothed another way, and a long line of words that are set and not drawn drifts by a pixel. */
    private static final double EDGES = 0.009;

    static Stream<Arguments> figures() {
        ExerciseFigures figures = new ExerciseFigures();
        List<String> keys = List.copyOf(figures.keys());
        // the usual run takes a quarter of the exercises, -Dsteadwork.everything=true all
        int step = Boolean.getBoolean("steadwork.everything") ? 1 : 4;
        return IntStream.iterate(0, i -> i < keys.size(), i -> i + step).mapToObj(keys::get).flatMap(key -> Stream.of(Arguments.of(key, figures.svg(key, "", null).orElseThrow()),
                Arguments.of(key + " left, held", figures.svg(key, "left", new Range(10, 15)).orElseThrow())));
    }

    static Stream<Arguments> trends() {
        LocalDate start = LocalDate.of(2030, 3, 4);
        List<Trend.Visit> visits = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            visits.add(new Trend.Visit(start.plusWeeks(2L * i), i == 3 ? null : 46.0 - 5 * i));
        }
        List<PlanMark> marks = Stream.of(PlanMark.Kind.values()).map(kind -> new PlanMark(start.plusDays(10L + 9 * kind.ordinal()), kind, "Change " + kind)).toList();
        Trend plain = new Trend("odi", "Back disability", "%", 0, 100, true, 0, visits, 10.5, 12.0);
        return Stream.of(TrendSize.values()).flatMap(size -> Stream.of(plain, new Trend("odi", "Back disability", "%", 0, 100, true, 0, visits, 10.5, 12.0, marks))
                .map(trend -> Arguments.of(size + " with " + trend.marks().size() + " marks", TrendChart.draw(trend, size))));
    }

    static Stream<Arguments> desks() {
        return WorkedScenes.ALL.stream().flatMap(name -> Stream.of(Arguments.of(name + " card", DeskCard.draw(WorkedScenes.scene(name)).svg()),
                Arguments.of(name + " view", DeskView.draw(WorkedScenes.scene(name), Show.BOTH, DeskView.PAGE).svg())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"figures", "trends", "desks"})
    void isPaintedAsTheGeneralRendererPaintsIt(String name, String svg) throws Exception {
        Element drawing = parse(svg.replace("\"sans-serif\"", "\"Liberation Sans\"")); // letters have no other face; the general renderer would ask the machine for one
        BufferedImage ours = image(drawing, true);
        BufferedImage theirs = image(drawing, false);
        double off = farOff(ours, theirs);
        assertTrue(off < EDGES, () -> name + ": " + off + " of the pixels are far off");
        assertTrue(farOff(ours, new BufferedImage(ours.getWidth(), ours.getHeight(), BufferedImage.TYPE_INT_RGB)) > 0.1, "the picture is empty");
    }

    @Test
    void theComparisonSeesAShapeThatIsMovedOrMissing() throws Exception {
        String svg = new ExerciseFigures().svg("sh_rolls", "", null).orElseThrow();
        BufferedImage right = image(parse(svg), false);
        assertTrue(farOff(image(parse(svg.replaceFirst("<g>", "<g transform=\"translate(2 0)\">")), true), right) > EDGES);
        assertTrue(farOff(image(parse(svg.replace("<ellipse", "<defs").replace("<circle", "<defs")), true), right) > EDGES);
    }

    @Test
    void wordsStayWordsOnce() throws Exception {
        String svg = trends().map(one -> (String) one.get()[1]).findFirst().orElseThrow();
        LetterPdf pdf = PdfPress.print(HEAD + svg + "</body></html>", "t", "a",
                Instant.EPOCH);
        String text = PrintedPages.text(pdf.bytes());
        assertEquals(1, text.split("measurement error", -1).length - 1, text);
    }

    @Test
    void whatIsNotPlainIsRefusedAndLeftToTheGeneralRenderer() throws Exception {
        String head = "<svg viewBox=\"0 0 10 10\">";
        for (String part : List.of("<use href=\"#a\"/>", "<rect width=\"5\" height=\"5\" opacity=\"0.5\"/>", "<rect width=\"5mm\" height=\"5\"/>", "<rect width=\"5\" height=\"5\" fill=\"red\"/>",
                "<rect width=\"5\" height=\"5\" style=\"fill:#ff0000\"/>", "<text x=\"1\" y=\"1\">a<tspan>b</tspan></text>", "<text x=\"1\" y=\"1\">王</text>",
                "<g clip-path=\"url(#none)\"><rect width=\"5\" height=\"5\"/></g>", "<path d=\"M0 0 X\"/>", "<g transform=\"turn(3)\"><path d=\"M0 0\"/></g>")) {
            assertThrows(IllegalArgumentException.class, () -> PlainDrawing.read(parse(head + part + "</svg>")), part);
        }
        assertFalse(PlainDrawing.read(parse(head + "<rect width=\"5\" height=\"5\" fill=\"#ff0000\"/></svg>")).parts().isEmpty());
        LetterPdf pdf = PdfPress.print(HEAD + head + "<rect width=\"10\" height=\"10\" fill=\"red\"/></svg></body></html>", "t", "a",
                Instant.EPOCH);
        BufferedImage page = ImageIO.read(new ByteArrayInputStream(PrintedPages.png(pdf.bytes(), 1, 72)));
        boolean red = false;
        for (int x = 0; x < page.getWidth() && !red; x++) {
            for (int y = 0; y < page.getHeight() && !red; y++) {
                red = (page.getRGB(x, y) & 0xffffff) == 0xff0000;
            }
        }
        assertTrue(red);
    }

    private static Element parse(String svg) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg))).getDocumentElement();
    }

    private static BufferedImage image(Element svg, boolean ours) throws IOException {
        double[] view = new double[4];
        float[] numbers = DrawingLook.numbers(svg.getAttribute("viewBox"));
        for (int i = 0; i < 4; i++) {
            view[i] = numbers[i];
        }
        Document document = new Document(new Rectangle((float) view[2], (float) view[3]), 0, 0, 0, 0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter writer = PdfWriter.getInstance(document, out);
        document.open();
        PdfTemplate form = writer.getDirectContent().createTemplate((float) view[2], (float) view[3]);
        if (ours) {
            DrawingPainter.paint(PlainDrawing.read(svg), view, form);
        } else {
            AnyDrawing.paint(svg, view, form);
        }
        writer.getDirectContent().addTemplate(form, 0, 0);
        document.close();
        return ImageIO.read(new ByteArrayInputStream(PrintedPages.png(out.toByteArray(), 1, Math.round(72 * SCALE))));
    }

    private static double farOff(BufferedImage one, BufferedImage other) {
        assertEquals(one.getWidth(), other.getWidth());
        assertEquals(one.getHeight(), other.getHeight());
        int far = 0;
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                int a = one.getRGB(x, y);
                int b = other.getRGB(x, y);
                boolean off = false;
                for (int shift = 0; shift < 24; shift += 8) {
                    off |= Math.abs((a >> shift & 0xff) - (b >> shift & 0xff)) > FAR;
                }
                far += off ? 1 : 0;
            }
        }
        return (double) far / (one.getWidth() * one.getHeight());
    }
}
