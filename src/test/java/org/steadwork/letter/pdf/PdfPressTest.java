package org.steadwork.letter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.junit.jupiter.api.Test;

class PdfPressTest {

    private static final Instant MADE = Instant.parse("2026-11-25T10:15:30Z");
    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="10 10 200 100"><rect x="10" y="10" width="200" height="100" fill="#f2ede4"/>\
            <circle cx="110" cy="60" r="40" fill="#6b2d5c"/><path d="M20 20 L200 100" stroke="#1d2733" stroke-width="2" fill="none"/>\
            <text x="40" y="40" font-family="Liberation Sans" font-size="12" fill="#1d2733">660 mm</text></svg>""";

    private static LetterPdf print(String body) {
        return PdfPress.print("<html><head><title>Report</title><link rel=\"stylesheet\" href=\"letter.css\"/></head><body>"
                + body + "</body></html>", "Report to employer & more", "T. Okoro-Vale", MADE);
    }

    private static void assertArchivable(LetterPdf pdf) throws IOException {
        Path file = Files.createTempFile("letter", ".pdf");
        Files.write(file, pdf.bytes());
        ValidationResult result = PreflightParser.validate(file.toFile());
        assertTrue(result.isValid(), () -> result.getErrorsList().stream().map(e -> e.getErrorCode() + " " + e.getDetails()).toList().toString());
        Files.delete(file);
    }

    @Test
    void textDrawingAndTableMakeAnArchivablePdf() throws IOException {
        assertArchivable(print("<h1>Report</h1><p><b>bold</b> <i>italic</i> plain −150 mm</p>" + DRAWING
                + "<table><thead><tr><th>Change</th></tr></thead><tbody><tr><td>Headset</td></tr></tbody></table>"));
    }

    @Test
    void aTransparentDrawingIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> print(DRAWING.replace("fill=\"#6b2d5c\"", "fill=\"#6b2d5c\" fill-opacity=\"0.5\"")));
    }

    @Test
    void theCheckItselfFailsWithoutTheOutputIntent() throws IOException {
        try (PDDocument document = Loader.loadPDF(print("<p>x</p>").bytes())) {
            document.getDocumentCatalog().setOutputIntents(List.of());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            assertThrows(AssertionError.class, () -> assertArchivable(new LetterPdf(out.toByteArray(), 1)));
        }
    }

    @Test
    void textIsReadBackWithAccentsAndHebrew() {
        String text = PrintedPages.text(print("<p>Åse Đặng-Łukasz, Ñandú Ó Súilleabháin</p><p>Name: שרה כהן, born 1988</p><p>Ирина</p>").bytes());
        assertTrue(text.contains("Åse Đặng-Łukasz, Ñandú Ó Súilleabháin"), text);
        assertTrue(text.contains("Ирина"), text);
        assertTrue(text.contains("שרה כהן"), text);
    }

    @Test
    void hebrewIsDrawnFromTheRight() {
        assertEquals("Name: ןהכ הרש, born 1988", VisualOrder.of("Name: שרה כהן, born 1988"));
        assertEquals("plain (a)", VisualOrder.of("plain (a)"));
    }

    @Test
    void charactersTheFaceDoesNotCarryAreNamed() {
        assertTrue(LetterFonts.missing("Åse Đặng-Łukasz שרה Ирина −150 ± 3").isEmpty());
        assertFalse(LetterFonts.missing("سارة").isEmpty());
        assertFalse(LetterFonts.missing("王").isEmpty());
    }

    @Test
    void allFontsAreEmbedded() throws IOException {
        try (PDDocument document = Loader.loadPDF(print("<h1>A</h1><p>b <i>c</i></p>").bytes())) {
            int fonts = 0;
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                assertTrue(document.getPage(0).getResources().getFont(name).isEmbedded(), name.getName());
                fonts++;
            }
            assertEquals(3, fonts);
        }
    }

    @Test
    void aDrawingStaysShapes() throws IOException {
        LetterPdf pdf = print(DRAWING);
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            int forms = 0;
            PDResources resources = document.getPage(0).getResources();
            for (COSName name : resources.getXObjectNames()) {
                PDXObject object = resources.getXObject(name);
                assertFalse(object instanceof PDImageXObject, "a bitmap");
                forms += object instanceof PDFormXObject ? 1 : 0;
            }
            assertEquals(1, forms);
        }
        assertTrue(pdf.bytes().length < 100_000, pdf.bytes().length + " bytes");
        assertNotEquals(PrintedPages.png(print("<p>none</p>").bytes(), 1, 72).length, PrintedPages.png(pdf.bytes(), 1, 72).length);
    }

    /** A square of 100 CSS pixels is 75 points, which is 75 pixels of a page drawn at 72 dots per inch. */
    @Test
    void aDrawingFillsTheRoomItIsGiven() throws IOException {
        LetterPdf pdf = print("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 400 400\" style=\"width: 100px\"><rect x=\"0\" y=\"0\" width=\"400\" height=\"400\" fill=\"#ff0000\"/></svg>");
        var image = ImageIO.read(new ByteArrayInputStream(PrintedPages.png(pdf.bytes(), 1, 72)));
        int red = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                red += (image.getRGB(x, y) & 0xffffff) == 0xff0000 ? 1 : 0;
            }
        }
        assertEquals(75 * 75, red, 4 * 75);
    }

    @Test
    void pagesAreCountedAndDrawn() throws IOException {
        LetterPdf pdf = print("<p>one line of a letter</p>".repeat(120));
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            assertEquals(document.getNumberOfPages(), pdf.pages());
            PDPage page = document.getPage(0);
            assertEquals(595.28, page.getMediaBox().getWidth(), 0.5);
        }
        assertTrue(pdf.pages() > 1);
        var image = ImageIO.read(new ByteArrayInputStream(PrintedPages.png(pdf.bytes(), pdf.pages(), 96)));
        assertEquals(794, image.getWidth(), 2);
        assertThrows(IllegalArgumentException.class, () -> PrintedPages.png(pdf.bytes(), pdf.pages() + 1, 96));
        assertThrows(IllegalArgumentException.class, () -> PrintedPages.png(pdf.bytes(), 1, 30));
        assertTrue(PrintedPages.text(pdf.bytes()).contains("Page 2 of " + pdf.pages()));
    }

    @Test
    void tenPagesOfLongAccentedAndRightToLeftNamesAreArchivableOnEitherPaper() throws Exception {
        String name = "Wolfeschlegelsteinhausenbergerdorff-Đặng-Łukasiewicz Ó Súilleabháin שרה כהן";
        String xhtml = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><link rel=\"stylesheet\" href=\"letter.css\"/></head><body>"
                + "<div class=\"letterhead\"><b>" + name + "</b></div><div class=\"foot\">foot</div><h1>" + name + "</h1>"
                + ("<h2>Heading</h2><p>" + name + " reports less pain on lifting. </p>").repeat(170) + "</body></html>";
        for (Paper paper : Paper.values()) {
            LetterPdf pdf = PdfPress.print(xhtml, "Ten pages", "T. Okoro-Vale", MADE, paper);
            assertTrue(pdf.pages() >= 10, pdf.pages() + " pages");
            assertArchivable(pdf);
            try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
                assertEquals(paper == Paper.A4 ? 595.28 : 612, document.getPage(9).getMediaBox().getWidth(), 0.5);
                assertEquals(paper == Paper.A4 ? 841.89 : 792, document.getPage(9).getMediaBox().getHeight(), 0.5);
            }
            String text = PrintedPages.text(pdf.bytes());
            assertTrue(text.contains("Page 10 of " + pdf.pages()) && text.contains("Łukasiewicz Ó Súilleabháin"), text.substring(0, 500));
        }
    }

    @Test
    void metadataCarryTitleAuthorAndTime() throws IOException {
        try (PDDocument document = Loader.loadPDF(print("<p>x</p>").bytes())) {
            assertEquals("Report to employer & more", document.getDocumentInformation().getTitle());
            assertEquals(MADE, document.getDocumentInformation().getCreationDate().toInstant());
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("Report to employer &amp; more"));
        }
    }

    @Test
    void fingerprintIsTheOneOfTheBytes() {
        // Source: FIPS 180-2, appendix B.1: the message "abc"
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                LetterPdf.sha256("abc".getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void brokenOrForeignMarkupIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> print("<p>not closed"));
        assertThrows(IllegalArgumentException.class, () -> PdfPress.print(
                "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html><body>&x;</body></html>", "t", "a", MADE));
    }

    @Test
    void nothingIsFetchedFromOutside() {
        assertThrows(IllegalArgumentException.class, () -> print("<img src=\"file:///etc/hostname\" alt=\"\"/>"));
        String plain = PrintedPages.text(print("<p>before</p>").bytes());
        assertEquals(plain, PrintedPages.text(PdfPress.print("<html><head><link rel=\"stylesheet\" href=\"letter.css\"/>"
                + "<link rel=\"stylesheet\" href=\"http://localhost:1/x.css\"/></head><body><p>before</p></body></html>",
                "t", "a", MADE).bytes()));
    }
}
