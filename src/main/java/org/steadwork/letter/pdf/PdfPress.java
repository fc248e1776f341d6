package org.steadwork.letter.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import com.lowagie.text.pdf.PdfXConformanceException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Prints XHTML as PDF/A-1b: fonts embedded, colours tied to sRGB, title and dates in the metadata, drawings as shapes.
 * Reads nothing from outside: the only style sheet is the one for letters on the class path.
 */
public final class PdfPress {

    /** The quickest: a tenth larger than the usual level makes it, in less than half the time. */
    static final int COMPRESSION = Deflater.BEST_SPEED;

    private static final String MADE_BY = "Steadwork";

    /** What no XML document may hold; it is printed as the sign for a lost character. */
    private static final Pattern NOT_XML = Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    /** Larger than anything a compressor asks for. */
    private static final int BLOCK = 4 << 20;

    static {
        // For the dozen streams of a letter the library makes a dozen compressors. glibc hands the memory of each back to the system and asks for it
        // again, page by page, until it has seen a larger block come and go (mallopt(3), M_MMAP_THRESHOLD): half the time of printing. This is that block.
        ByteBuffer.allocateDirect(BLOCK);
    }

    private PdfPress() {
    }

    /**
     * Prints one document.
     *
     * @param xhtml  well-formed XHTML; document type declarations are refused
     * @param title  title for the metadata, not blank
     * @param author author for the metadata
     * @param made   the time of making, to the second; the same input and time give the same text and metadata
     * @throws IllegalArgumentException when the XHTML is not well formed, or holds what PDF/A-1b does not allow
     */
    public static LetterPdf print(String xhtml, String title, String author, Instant made) {
        return print(xhtml, title, author, made, Paper.A4);
    }

    /** Prints one document on a paper; for the rest as {@link #print(String, String, String, Instant)}. */
    public static LetterPdf print(String xhtml, String title, String author, Instant made, Paper paper) {
        Document document = parse(plain(xhtml) ? xhtml : NOT_XML.matcher(xhtml).replaceAll("\uFFFD"));
        VisualOrder.apply(document.getDocumentElement());
        VectorDrawings.lift(document.getDocumentElement());
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        LetterStyle agent = new LetterStyle(device, paper);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT, ITextRenderer.DEFAULT_DOTS_PER_PIXEL,
                device, agent, LetterFonts.resolver(), new VectorDrawings(device), new LetterText());
        renderer.setPDFVersion(PdfWriter.VERSION_1_4);
        renderer.setPDFXConformance(PdfWriter.PDFA1B);
        try (LetterRules rules = new LetterRules(agent, paper)) {
            renderer.getSharedContext().setCss(rules);
            renderer.setDocument(document);
            return write(renderer, new Archive(title, author, made));
        }
    }

    /** Whether a text surely holds nothing but what XML allows: no controls, and no character of two parts, which would have to be looked at. */
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\n' && c != '\t' && c != '\r' || c >= Character.MIN_SURROGATE && (c <= Character.MAX_SURROGATE || c > '\uFFFD')) {
                return false;
            }
        }
        return true;
    }

    private static LetterPdf write(ITextRenderer renderer, Archive archive) {
        renderer.layout();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        renderer.setListener(archive);
        try {
            renderer.createPDF(out);
        } catch (PdfXConformanceException e) {
            throw new IllegalArgumentException("The letter cannot be kept as PDF/A-1b: " + e.getMessage(), e);
        } catch (DocumentException e) {
            throw new IllegalStateException("The letter cannot be printed", e);
        }
        return new LetterPdf(out.toByteArray(), archive.pages);
    }

    private static Document parse(String xhtml) {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance(); // looking for another one searches the whole class path
        try {
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (SAXException e) {
            throw new IllegalArgumentException("The letter is not well formed: " + e.getMessage(), e);
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes what PDF/A-1b asks for beside the pages: metadata twice, alike, and the meaning of the colours. */
    private static final class Archive extends DefaultPDFCreationListener {

        private final String title;
        private final String author;
        private final ZonedDateTime made;
        private int pages;

        Archive(String title, String author, Instant made) {
            this.title = title;
            this.author = author;
            this.made = ZonedDateTime.ofInstant(made, ZoneOffset.UTC).withNano(0);
        }

        @Override
        public void preWrite(ITextRenderer renderer, int pageCount) {
            pages = pageCount;
            renderer.getWriter().setCompressionLevel(COMPRESSION);
            ColourMeaning.put(renderer.getWriter());
        }

        @Override
        public void onClose(ITextRenderer renderer) {
            PdfWriter writer = renderer.getWriter();
            PdfDictionary info = writer.getInfo();
            PdfDate date = new PdfDate(GregorianCalendar.from(made));
            info.put(PdfName.TITLE, new PdfString(title, PdfString.TEXT_UNICODE));
            info.put(PdfName.AUTHOR, new PdfString(author, PdfString.TEXT_UNICODE));
            info.put(PdfName.PRODUCER, new PdfString(MADE_BY));
            info.put(PdfName.CREATOR, new PdfString(MADE_BY));
            info.put(PdfName.CREATIONDATE, date);
            info.put(PdfName.MODDATE, date);
            writer.setXmpMetadata(Xmp.packet(title, author, MADE_BY, made));
        }
    }
}
