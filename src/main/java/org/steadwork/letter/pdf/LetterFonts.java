package org.steadwork.letter.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/**
 * The faces letters are set in: Liberation Sans, embedded. It carries the Latin, Greek, Cyrillic and Hebrew scripts and
 * neither Arabic nor the scripts of South and East Asia.
 */
public final class LetterFonts {

    /** The family name style sheets use; the generic names lead to the same faces, since nothing else may be embedded. */
    private static final List<String> FAMILIES = List.of("Liberation Sans", "Serif", "SansSerif", "Monospaced");

    /** Regular, bold, italic, bold italic. */
    private static final List<String> FACES = List.of("liberation/LiberationSans-Regular.ttf", "liberation/LiberationSans-Bold.ttf",
            "liberation/LiberationSans-Italic.ttf", "liberation/LiberationSans-BoldItalic.ttf");
    private static final List<BaseFont> EMBEDDED = FACES.stream().map(LetterFonts::embedded).toList();
    private static final List<Font> OUTLINES = FACES.stream().map(LetterFonts::outlines).toList();
    private static final Map<String, FontFamily> READ = read();

    private LetterFonts() {
    }

    /** Makes a resolver that knows the embedded faces only, and none of the faces every reader program brings along. */
    static ITextFontResolver resolver() {
        return over(new HashMap<>(READ));
    }

    private static ITextFontResolver over(Map<String, FontFamily> families) {
        return new ITextFontResolver() {
            @Override
            protected Map<String, FontFamily> loadFonts() {
                return families;
            }
        };
    }

    /** Returns a face as it is embedded. */
    static BaseFont face(boolean bold, boolean italic) {
        return EMBEDDED.get(index(bold, italic));
    }

    /** Returns a face as shapes, one unit high. */
    static Font outlines(boolean bold, boolean italic) {
        return OUTLINES.get(index(bold, italic));
    }

    private static int index(boolean bold, boolean italic) {
        return (bold ? 1 : 0) + (italic ? 2 : 0);
    }

    /** Describes the faces once: doing it for every letter took most of the time of printing it. */
    private static Map<String, FontFamily> read() {
        ITextFontResolver resolver = over(new HashMap<>());
        for (String family : FAMILIES) {
            for (int i = 0; i < FACES.size(); i++) {
                resolver.addFont(EMBEDDED.get(i), FACES.get(i), family);
            }
        }
        return Map.copyOf(resolver.getFonts());
    }

    private static BaseFont embedded(String face) {
        try {
            BaseFont font = BaseFont.createFont(face, BaseFont.IDENTITY_H, BaseFont.EMBEDDED);
            font.setCompressionLevel(PdfPress.COMPRESSION);
            return font;
        } catch (IOException | DocumentException e) {
            throw new IllegalStateException("The font " + face + " cannot be read", e);
        }
    }

    /** Reads a face for asking what it carries, and lends it to drawings that are painted in letters. */
    private static Font outlines(String face) {
        try (InputStream in = LetterFonts.class.getClassLoader().getResourceAsStream(face)) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, in);
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("The font " + face + " cannot be read", e);
        }
    }

    /** Returns the characters of a text that letters cannot show, each once; empty when all can be shown. */
    public static Set<String> missing(String text) {
        Set<String> missing = new TreeSet<>();
        text.codePoints().filter(c -> !Character.isWhitespace(c) && !OUTLINES.get(0).canDisplay(c)).forEach(c -> missing.add(Character.toString(c)));
        return missing;
    }
}
