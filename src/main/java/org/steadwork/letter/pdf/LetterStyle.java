package org.steadwork.letter.pdf;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
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

    LetterStyle(ITextOutputDevice device) {
        super(device, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
    }

    @Override
    public String resolveURI(String uri) {
        return uri;
    }

    @Override
    protected InputStream resolveAndOpenStream(String uri) {
        if (SHEET.equals(uri)) {
            return onClassPath("templates/letter/" + SHEET);
        }
        return uri != null && uri.endsWith("/" + DEFAULTS) ? onClassPath(DEFAULTS) : new ByteArrayInputStream(new byte[0]);
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
