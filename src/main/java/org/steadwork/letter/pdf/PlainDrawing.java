package org.steadwork.letter.pdf;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * A drawing read from SVG that holds basic shapes, words in one line, groups and clips to one shape, with numbers without
 * units and colours as {@code #rrggbb}: what the drawings of this program hold. Anything else is refused, not left out.
 */
final class PlainDrawing {

    /** A part of the drawing. */
    sealed interface Part permits Group, Figure, Words {
    }

    /**
     * Parts that are moved and clipped together.
     *
     * @param transform null for none
     * @param clip      null for none
     */
    record Group(AffineTransform transform, Shape clip, List<Part> parts) implements Part {
    }

    /** A shape. */
    record Figure(Shape shape, DrawingLook look) implements Part {
    }

    /** Words in one line; x and y are where the anchor of their look stands on the base line. */
    record Words(String text, double x, double y, DrawingLook look) implements Part {
    }

    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Set<String> SHAPES = Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    private static final Set<String> READ = Set.of("fill", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-dasharray", "fill-rule",
            "font-size", "font-weight", "font-style", "text-anchor", "transform", "clip-path", "d", "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r",
            "x1", "y1", "x2", "y2", "points");

    /** Attributes that change nothing on paper; the faces of letters are those of the letter. */
    private static final Set<String> SILENT = Set.of("id", "class", "role", "focusable", "lang", "viewBox", "font-family", "tabindex");

    private final Element root;

    private PlainDrawing(Element root) {
        this.root = root;
    }

    /**
     * Reads a drawing.
     *
     * @throws IllegalArgumentException naming what it holds beyond the plain
     */
    static Group read(Element svg) {
        checkAttributes(svg);
        PlainDrawing drawing = new PlainDrawing(svg);
        return new Group(null, null, drawing.inside(svg, DrawingLook.START.of(svg)));
    }

    private List<Part> inside(Element parent, DrawingLook look) {
        List<Part> parts = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                part(element, look, parts);
            }
        }
        return parts;
    }

    private void part(Element element, DrawingLook inherited, List<Part> parts) {
        String name = element.getNodeName();
        if (name.equals("title") || name.equals("desc") || name.equals("defs") || name.equals("clipPath")) {
            return; // not drawn; what is clipped looks for its clip by itself
        }
        checkAttributes(element);
        DrawingLook look = inherited.of(element);
        List<Part> here;
        if (name.equals("g")) {
            here = inside(element, look);
        } else if (name.equals("text")) {
            here = List.of(words(element, look));
        } else if (SHAPES.contains(name)) {
            here = List.of(new Figure(DrawingShapes.of(element), look));
        } else {
            throw new IllegalArgumentException("Not plain: " + name);
        }
        AffineTransform transform = DrawingShapes.transform(element);
        Shape clip = clip(element);
        if (transform == null && clip == null) {
            parts.addAll(here);
        } else {
            parts.add(new Group(transform, clip, here));
        }
    }

    private static Words words(Element element, DrawingLook look) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element) {
                throw new IllegalArgumentException("Not plain: words of several kinds in one text");
            }
        }
        String text = SPACES.matcher(element.getTextContent()).replaceAll(" ").strip();
        if (!text.chars().allMatch(LetterFonts.face(look.bold(), look.italic())::charExists)) {
            throw new IllegalArgumentException("Not plain: characters the face does not carry");
        }
        return new Words(text, DrawingShapes.number(element, "x"), DrawingShapes.number(element, "y"), look);
    }

    private Shape clip(Element element) {
        String value = element.getAttribute("clip-path");
        if (value.isEmpty()) {
            return null;
        }
        Element found = value.startsWith("url(#") && value.endsWith(")") ? find(root, value.substring(5, value.length() - 1)) : null;
        Element shape = found == null ? null : only(found);
        if (shape == null || shape.hasAttribute("transform")) {
            throw new IllegalArgumentException("Not plain: clip " + value);
        }
        return DrawingShapes.of(shape);
    }

    private static Element find(Element from, String id) {
        for (Node child = from.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                if (element.getNodeName().equals("clipPath") && element.getAttribute("id").equals(id)) {
                    return element;
                }
                Element found = find(element, id);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** Returns the one element within another; null when there are none or several. */
    private static Element only(Element parent) {
        Element only = null;
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                if (only != null) {
                    return null;
                }
                only = element;
            }
        }
        return only;
    }

    private static void checkAttributes(Element element) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            if (!READ.contains(name) && !SILENT.contains(name) && !name.startsWith("aria-") && !name.startsWith("data-") && !name.startsWith("xmlns")) {
                throw new IllegalArgumentException("Not plain: " + element.getNodeName() + " with " + name);
            }
        }
    }
}
