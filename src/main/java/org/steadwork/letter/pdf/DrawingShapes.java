package org.steadwork.letter.pdf;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.w3c.dom.Element;

/** Reads the geometry of SVG elements, in units of the drawing. */
final class DrawingShapes {

    private static final int MOST_PATHS = 2000;

    /** The paths read last, which nobody changes; about a kilobyte each. */
    private static final Map<String, Shape> PATHS = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Shape> eldest) {
            return size() > MOST_PATHS;
        }
    });

    private DrawingShapes() {
    }

    /**
     * Returns the shape of an element.
     *
     * @throws IllegalArgumentException when it is no basic shape, or a number cannot be read
     */
    static Shape of(Element element) {
        return switch (element.getNodeName()) {
            case "path" -> path(element.getAttribute("d"));
            case "rect" -> rectangle(element);
            case "circle" -> ellipse(number(element, "cx"), number(element, "cy"), number(element, "r"), number(element, "r"));
            case "ellipse" -> ellipse(number(element, "cx"), number(element, "cy"), number(element, "rx"), number(element, "ry"));
            case "line" -> new Line2D.Double(number(element, "x1"), number(element, "y1"), number(element, "x2"), number(element, "y2"));
            case "polyline" -> corners(element, false);
            case "polygon" -> corners(element, true);
            default -> throw new IllegalArgumentException("No basic shape: " + element.getNodeName());
        };
    }

    /** Returns what an element's {@code transform} says; null where it says nothing. */
    static AffineTransform transform(Element element) {
        String value = element.getAttribute("transform");
        try {
            return value.isBlank() ? null : AWTTransformProducer.createAffineTransform(value);
        } catch (ParseException e) {
            throw new IllegalArgumentException("Not a transform: " + value, e);
        }
    }

    /** Reads a number; 0 where there is none. */
    static double number(Element element, String name) {
        String value = element.getAttribute(name);
        return value.isEmpty() ? 0 : Double.parseDouble(value);
    }

    /** Reads a path, or takes it from those read before: the figures of exercises come again in letter after letter. */
    private static Shape path(String d) {
        Shape known = PATHS.get(d);
        if (known == null) {
            known = read(d);
            PATHS.put(d, known);
        }
        return known;
    }

    private static Shape read(String d) {
        AWTPathProducer path = new AWTPathProducer();
        path.setWindingRule(Path2D.WIND_NON_ZERO);
        PathParser parser = new PathParser();
        parser.setPathHandler(path);
        try {
            parser.parse(d); // by a reader it takes several times as long
        } catch (ParseException e) {
            throw new IllegalArgumentException("Not a path: " + d, e);
        }
        return path.getShape();
    }

    /** A corner given one way round holds for the other too; it is at most half the side. */
    private static Shape rectangle(Element element) {
        double width = number(element, "width");
        double height = number(element, "height");
        double x = number(element, "x");
        double y = number(element, "y");
        double across = number(element, element.hasAttribute("rx") ? "rx" : "ry");
        double down = number(element, element.hasAttribute("ry") ? "ry" : "rx");
        return across > 0 && down > 0 ? new RoundRectangle2D.Double(x, y, width, height, Math.min(width, 2 * across), Math.min(height, 2 * down))
                : new Rectangle2D.Double(x, y, width, height);
    }

    private static Shape ellipse(double x, double y, double across, double down) {
        return new Ellipse2D.Double(x - across, y - down, 2 * across, 2 * down);
    }

    private static Shape corners(Element element, boolean closed) {
        float[] points = DrawingLook.numbers(element.getAttribute("points"));
        Path2D.Float path = new Path2D.Float();
        for (int i = 0; i + 1 < points.length; i += 2) {
            if (i == 0) {
                path.moveTo(points[0], points[1]);
            } else {
                path.lineTo(points[i], points[i + 1]);
            }
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
