package org.steadwork.letter.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfICCBased;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The output intent of PDF/A-1b (ISO 19005-1, 6.2.2): the colours of a letter are those of sRGB. */
final class ColourMeaning {

    /** The profile as a letter holds it, made small once; each letter writes the same bytes. */
    private static final PdfICCBased PROFILE = new PdfICCBased(ICC_Profile.getInstance(ColorSpace.CS_sRGB));

    private ColourMeaning() {
    }

    static void put(PdfWriter writer) {
        PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, PdfName.GTS_PDFA1);
        intent.put(PdfName.OUTPUTCONDITION, words(""));
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, words("sRGB"));
        intent.put(PdfName.REGISTRYNAME, words("http://www.color.org"));
        intent.put(PdfName.INFO, words("sRGB IEC61966-2.1"));
        try {
            intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(PROFILE).getIndirectReference());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }

    private static PdfString words(String words) {
        return new PdfString(words, PdfObject.TEXT_UNICODE);
    }
}
