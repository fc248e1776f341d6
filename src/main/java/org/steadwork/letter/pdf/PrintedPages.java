package org.steadwork.letter.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Looks at a finished PDF: its pages as pictures, and the text a reader would find in it. */
public final class PrintedPages {

    private PrintedPages() {
    }

    /**
     * Renders one page of a PDF as a PNG image.
     *
     * @param page number of the page, from 1
     * @param dpi  dots per inch, in [36, 300]
     * @throws IllegalArgumentException when there is no such page or the resolution is out of range
     */
    public static byte[] png(byte[] pdf, int page, int dpi) {
        if (!(dpi >= 36 && dpi <= 300)) {
            throw new IllegalArgumentException("The resolution must be 36 to 300 dots per inch, but was " + dpi);
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            if (!(page >= 1 && page <= document.getNumberOfPages())) {
                throw new IllegalArgumentException("There is no page " + page + " of " + document.getNumberOfPages());
            }
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page - 1, dpi, ImageType.RGB);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the text of all pages, as a reader's search would find it. */
    public static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
