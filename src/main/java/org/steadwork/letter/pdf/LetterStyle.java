package org.steadwork.letter.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/**
 * Gives the layout its own defaults and the style sheet for letters, both from the class path, and nothing else: a letter
 * can pull in no file and no address.
 */
final class LetterStyle extends ITextUserAgent {

    private static final String DEFAULTS = "resources/css/XhtmlNamespaceHandler.css";
    private static final String SHEET = "letter.css";

    /** The line of the style sheet that names the paper. */
    private static final String SIZE = "size: A4;";

    private final Paper paper;

    LetterStyle(ITextOutputDevice device, Paper paper) {
        super(device, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
        this.paper = paper;
    }

    @Override
    public String resolveURI(String uri) {
        return uri;
    }

    @Override
    protected InputStream resolveAndOpenStream(String uri) {
        if (SHEET.equals(uri)) {
            return onPaper(onClassPath("templates/letter/" + SHEET));
        }
        return uri != null && uri.endsWith("/" + DEFAULTS) ? onClassPath(DEFAULTS) : new ByteArrayInputStream(new byte[0]);
    }

    private InputStream onPaper(InputStream sheet) {
        try (sheet) {
            String css = new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
            if (!css.contains(SIZE)) {
                throw new IllegalStateException(SHEET + " must name the paper: " + SIZE);
            }
            return new ByteArrayInputStream(css.replace(SIZE, "size: " + paper.size() + ";").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream onClassPath(String name) {
        InputStream in = Thread.currentThread().getContextClassLoader().getResourceAsStream(name);
        if (in == null) {
            in = LetterStyle.class.getClassLoader().getResourceAsStream(name);
        }
        if (in == null) {
            throw new IllegalStateException(name + " is missing from the class path");
        }
        return in;
    }
}
