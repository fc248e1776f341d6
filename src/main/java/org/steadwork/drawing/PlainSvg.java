package org.steadwork.drawing;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.jfree.svg.SVGGraphics2D;

/**
 * Rewrites the SVG of a charting library for a strict content security policy: style attributes become presentation
 * attributes, fonts are left to the page, clip paths and full opacities go, numbers keep one decimal.
 */
final class PlainSvg {

    private static final Set<String> KEPT = Set.of("fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin",
            "font-size", "font-weight", "font-style");
    private static final Set<String> GEOMETRY = Set.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "width", "height", "d",
            "points", "transform");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(?:[eE]-?\\d+)?");
    private static final Pattern RGB = Pattern.compile("rgb\\((\\d+),\\s*(\\d+),\\s*(\\d+)\\)");

    private static final double LARGEST = 1e12;
    private static final XMLInputFactory READERS = readers();

    private PlainSvg() {
    }

    private static XMLInputFactory readers() {
        XMLInputFactory readers = XMLInputFactory.newDefaultFactory();
        readers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        readers.setProperty(XMLInputFactory.IS_COALESCING, true);
        return readers;
    }

    /** A canvas for a chart of this size, in units of the drawing, whose numbers have one decimal from the start. */
    static SVGGraphics2D canvas(double width, double height) {
        SVGGraphics2D canvas = new SVGGraphics2D(width, height);
        canvas.setGeomDoubleConverter(PlainSvg::rounded);
        canvas.setTransformDoubleConverter(PlainSvg::rounded);
        return canvas;
    }

    /** The inside of the svg element, rewritten. */
    static String inside(String svg) {
        try {
            XMLStreamReader in = READERS.createXMLStreamReader(new StringReader(svg));
            StringBuilder out = new StringBuilder(svg.length());
            while (in.next() != XMLStreamConstants.START_ELEMENT) {
                // what stands before the svg element
            }
            children(in, out);
            return out.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("The chart's SVG could not be read: " + e.getMessage(), e);
        }
    }

    /** Writes what stands in an element, to its end; returns whether there was anything. */
    private static boolean children(XMLStreamReader in, StringBuilder out) throws XMLStreamException {
        boolean any = false;
        while (in.next() != XMLStreamConstants.END_ELEMENT) {
            any = true;
            if (in.isStartElement()) {
                element(in, out);
            } else if (in.isCharacters()) {
                out.append(SvgText.escape(in.getText()));
            }
        }
        return any;
    }

    private static void element(XMLStreamReader in, StringBuilder out) throws XMLStreamException {
        String name = in.getLocalName();
        if (name.equals("defs")) {
            children(in, new StringBuilder());
            return;
        }
        Map<String, String> attributes = new LinkedHashMap<>();
        String style = "";
        for (int i = 0; i < in.getAttributeCount(); i++) {
            String attribute = in.getAttributeLocalName(i);
            if (GEOMETRY.contains(attribute)) {
                attributes.put(attribute, rounded(in.getAttributeValue(i)));
            } else if (attribute.equals("style")) {
                style = in.getAttributeValue(i);
            }
        }
        looks(style, attributes);
        if (name.equals("g") && attributes.isEmpty()) {
            children(in, out);
            return;
        }
        out.append('<').append(name);
        attributes.forEach((key, value) -> out.append(' ').append(key).append("=\"").append(SvgText.escape(value)).append('"'));
        int end = out.length();
        out.append('>');
        if (children(in, out)) {
            out.append("</").append(name).append(">\n");
        } else {
            out.replace(end, end + 1, "/>\n");
        }
    }

    private static void looks(String style, Map<String, String> attributes) {
        for (String part : style.split(";")) {
            int colon = part.indexOf(':');
            if (colon < 0) {
                continue;
            }
            String key = part.substring(0, colon).strip();
            String value = part.substring(colon + 1).strip();
            if (key.endsWith("opacity") && Double.parseDouble(value) != 1) {
                throw new IllegalStateException("A chart must not be transparent, but " + key + " is " + value);
            }
            if (KEPT.contains(key)) {
                attributes.put(key, rounded(hex(value.replace("px", ""))));
            }
        }
    }

    private static String hex(String value) {
        Matcher rgb = RGB.matcher(value);
        return rgb.matches()
                ? String.format("#%02x%02x%02x", Integer.parseInt(rgb.group(1)), Integer.parseInt(rgb.group(2)), Integer.parseInt(rgb.group(3)))
                : value;
    }

    static String rounded(String value) {
        return hasFewDecimals(value) ? value : NUMBER.matcher(value).replaceAll(m -> rounded(Double.parseDouble(m.group())));
    }

    /** Whether each number has one decimal at most, and not a nought, as the canvas writes them. */
    private static boolean hasFewDecimals(String value) {
        for (int point = value.indexOf('.'); point >= 0; point = value.indexOf('.', point + 1)) {
            boolean one = point + 1 < value.length() && value.charAt(point + 1) >= '1' && value.charAt(point + 1) <= '9';
            if (!one || point + 2 < value.length() && (Character.isDigit(value.charAt(point + 2)) || Character.toLowerCase(value.charAt(point + 2)) == 'e')) {
                return false;
            }
        }
        return true;
    }

    static String rounded(double value) {
        if (!(Math.abs(value) < LARGEST)) {
            throw new IllegalStateException("A chart has no place for " + value);
        }
        long tenths = Math.round(Math.abs(value) * 10);
        return (value < 0 && tenths > 0 ? "-" : "") + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }
}
