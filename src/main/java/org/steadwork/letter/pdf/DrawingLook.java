package org.steadwork.letter.pdf;

import java.awt.Color;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * How the shapes and words of a drawing look: SVG's presentation attributes, which an element takes over from its parent.
 *
 * @param fill   null for none
 * @param stroke null for none
 * @param dash   lengths of strokes and gaps in units of the drawing; empty for a solid line
 * @param anchor the part of a text that stands at its place: start, middle or end
 */
record DrawingLook(Color fill, Color stroke, float width, int cap, int join, float[] dash, boolean evenOdd,
                   float fontSize, boolean bold, boolean italic, String anchor) {

    /** What SVG says of an element that says nothing: black, without a line. */
    static final DrawingLook START = new DrawingLook(Color.BLACK, null, 1, 0, 0, new float[0], false, 12, false, false, "start");

    private static final Pattern SPACES = Pattern.compile("[\\s,]+");
    private static final int BOLD_FROM = 600;

    /**
     * Returns the look of an element within one that looks like this.
     *
     * @throws IllegalArgumentException for a value that is not plain: a colour that is no {@code #rrggbb}, a length with a unit
     */
    DrawingLook of(Element element) {
        return new DrawingLook(colour(element, "fill", fill), colour(element, "stroke", stroke), number(element, "stroke-width", width),
                choice(element, "stroke-linecap", cap, "butt", "round", "square"), choice(element, "stroke-linejoin", join, "miter", "round", "bevel"),
                dash(element), choice(element, "fill-rule", evenOdd ? 1 : 0, "nonzero", "evenodd") == 1, number(element, "font-size", fontSize),
                weight(element) >= BOLD_FROM, choice(element, "font-style", italic ? 1 : 0, "normal", "italic") == 1,
                element.hasAttribute("text-anchor") ? element.getAttribute("text-anchor") : anchor);
    }

    private static Color colour(Element element, String name, Color inherited) {
        String value = element.getAttribute(name);
        if (value.isEmpty()) {
            return inherited;
        }
        if (value.equals("none")) {
            return null;
        }
        if (value.length() != 7 || value.charAt(0) != '#') {
            throw new IllegalArgumentException("A colour is written #rrggbb, but was " + value);
        }
        return new Color(Integer.parseInt(value, 1, 7, 16));
    }

    private static float number(Element element, String name, float inherited) {
        String value = element.getAttribute(name);
        return value.isEmpty() ? inherited : Float.parseFloat(value);
    }

    private static int choice(Element element, String name, int inherited, String... words) {
        String value = element.getAttribute(name);
        for (int i = 0; i < words.length; i++) {
            if (words[i].equals(value)) {
                return i;
            }
        }
        if (!value.isEmpty()) {
            throw new IllegalArgumentException(name + " cannot be " + value);
        }
        return inherited;
    }

    private int weight(Element element) {
        return switch (element.getAttribute("font-weight")) {
            case "" -> bold ? BOLD_FROM : 0;
            case "normal" -> 0;
            case "bold" -> BOLD_FROM;
            default -> Integer.parseInt(element.getAttribute("font-weight"));
        };
    }

    private float[] dash(Element element) {
        String value = element.getAttribute("stroke-dasharray").strip();
        if (value.isEmpty()) {
            return dash;
        }
        return value.equals("none") ? new float[0] : numbers(value);
    }

    /** Reads numbers that stand apart by blanks or commas. */
    static float[] numbers(String text) {
        String[] parts = SPACES.split(text.strip());
        float[] numbers = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Float.parseFloat(parts[i]);
        }
        return numbers;
    }
}
