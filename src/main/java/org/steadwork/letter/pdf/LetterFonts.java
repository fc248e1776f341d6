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

    private static final String REGULAR = "liberation/LiberationSans-Regular.ttf";
    private static final List<String> FACES = List.of(REGULAR, "liberation/LiberationSans-Bold.ttf",
            "liberation/LiberationSans-Italic.ttf", "liberation/LiberationSans-BoldItalic.ttf");
    private static final Map<String, FontFamily> READ = read();
    private static final Font OUTLINES = outlines();

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

    /** Reads the faces once: reading them for every letter took most of the time of printing it. */
    private static Map<String, FontFamily> read() {
        ITextFontResolver resolver = over(new HashMap<>());
        try {
            for (String family : FAMILIES) {
                for (String face : FACES) {
                    resolver.addFont(face, family, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, null);
                }
            }
        } catch (IOException | DocumentException e) {
            throw new IllegalStateException("The fonts for letters cannot be read", e);
        }
        return Map.copyOf(resolver.getFonts());
    }

    /** Returns the characters of a text that letters cannot show, each once; empty when all can be shown. */
    public static Set<String> missing(String text) {
        Set<String> missing = new TreeSet<>();
        text.codePoints().filter(c -> !Character.isWhitespace(c) && !OUTLINES.canDisplay(c)).forEach(c -> missing.add(Character.toString(c)));
        return missing;
    }

    /** Reads the regular face for asking what it carries, and lends all faces to drawings that are painted in letters. */
    private static Font outlines() {
        Font regular = null;
        for (String face : FACES) {
            try (InputStream in = LetterFonts.class.getClassLoader().getResourceAsStream(face)) {
                Font font = Font.createFont(Font.TRUETYPE_FONT, in);
                GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
                regular = face.equals(REGULAR) ? font : regular;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("The font " + face + " cannot be read", e);
            }
        }
        return regular;
    }
}
