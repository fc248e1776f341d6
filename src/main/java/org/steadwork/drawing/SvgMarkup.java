package org.steadwork.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/** Writes SVG as text: closes what was opened, escapes what was said, and leaves out attributes whose value is null. */
final class SvgMarkup {

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes come as name, value, name, value. */
    SvgMarkup open(String element, Object... attributes) {
        start(element, attributes);
        out.append('>');
        open.push(element);
        return this;
    }

    SvgMarkup empty(String element, Object... attributes) {
        start(element, attributes);
        out.append("/>");
        return this;
    }

    SvgMarkup text(String text) {
        out.append(SvgText.escape(text));
        return this;
    }

    SvgMarkup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Returns the drawing; throws {@link IllegalStateException} while an element is open. */
    String done() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("Still open: " + open);
        }
        return out.toString();
    }

    /** Writes a length with at most one decimal. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private void start(String element, Object... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("An attribute of " + element + " has no value");
        }
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            if (value != null) {
                String text = value instanceof Double number ? number(number) : value.toString();
                out.append(' ').append(attributes[i]).append("=\"").append(SvgText.escape(text)).append('"');
            }
        }
    }
}
