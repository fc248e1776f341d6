package org.steadwork.drawing;

import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

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

    private PlainSvg() {
    }

    /** The inside of the svg element, rewritten. */
    static String inside(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Element root = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))).getDocumentElement();
            StringBuilder out = new StringBuilder();
            children(root, out);
            return out.toString();
        } catch (Exception e) {
            throw new IllegalStateException("The chart's SVG could not be read: " + e.getMessage(), e);
        }
    }

    private static void children(Node parent, StringBuilder out) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                element(element, out);
            } else if (child.getNodeType() == Node.TEXT_NODE) {
                out.append(escape(child.getNodeValue()));
            }
        }
    }

    private static void element(Element element, StringBuilder out) {
        String name = element.getTagName();
        if (name.equals("defs")) {
            return;
        }
        Map<String, String> attributes = new LinkedHashMap<>();
        NamedNodeMap given = element.getAttributes();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < given.getLength(); i++) {
            names.add(given.item(i).getNodeName());
        }
        for (String attribute : names) {
            if (GEOMETRY.contains(attribute)) {
                attributes.put(attribute, rounded(element.getAttribute(attribute)));
            }
        }
        looks(element.getAttribute("style"), attributes);
        if (name.equals("g") && attributes.isEmpty()) {
            children(element, out);
            return;
        }
        out.append('<').append(name);
        attributes.forEach((key, value) -> out.append(' ').append(key).append("=\"").append(escape(value)).append('"'));
        if (element.hasChildNodes()) {
            out.append('>');
            children(element, out);
            out.append("</").append(name).append(">\n");
        } else {
            out.append("/>\n");
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
        return NUMBER.matcher(value).replaceAll(m -> {
            BigDecimal number = new BigDecimal(m.group()).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
            return (number.scale() < 0 ? number.setScale(0) : number).toPlainString();
        });
    }

    static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
