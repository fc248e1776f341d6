package org.steadwork.letter.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    private static final byte[] DEFAULT_RULES = read(DEFAULTS);
    private static final Map<Paper, byte[]> RULES = Stream.of(Paper.values()).collect(Collectors.toMap(Function.identity(), LetterStyle::on));

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
            return new ByteArrayInputStream(RULES.get(paper));
        }
        return new ByteArrayInputStream(uri != null && uri.endsWith("/" + DEFAULTS) ? DEFAULT_RULES : new byte[0]);
    }

    private static byte[] on(Paper paper) {
        String css = new String(read("templates/letter/" + SHEET), StandardCharsets.UTF_8);
        if (!css.contains(SIZE)) {
            throw new IllegalStateException(SHEET + " must name the paper: " + SIZE);
        }
        return css.replace(SIZE, "size: " + paper.size() + ";").getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] read(String name) {
        try (InputStream in = onClassPath(name)) {
            return in.readAllBytes();
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
