package org.steadwork.drawing.desk;

import java.util.List;
import java.util.Locale;
import org.steadwork.drawing.SvgText;
import org.steadwork.drawing.TextWidth;

/** Collects SVG elements; geometry and looks as attributes only, never as style. Units are those of the drawing. */
final class Pen {

    private final StringBuilder out = new StringBuilder();

    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A drawing cannot hold " + value);
        }
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    void open(String element) {
        out.append('<').append(element).append('>');
    }

    void close(String element) {
        out.append("</").append(element).append(">\n");
    }

    void line(Point a, Point b, Ink ink) {
        out.append("<line x1=\"").append(number(a.x())).append("\" y1=\"").append(number(a.y()))
                .append("\" x2=\"").append(number(b.x())).append("\" y2=\"").append(number(b.y())).append('"');
        attributes(ink);
    }

    void path(String d, Ink ink) {
        out.append("<path d=\"").append(d).append('"');
        attributes(ink);
    }

    void polygon(List<Point> corners, Ink ink) {
        path(outline(corners) + "Z", ink);
    }

    void circle(Point centre, double radius, Ink ink) {
        out.append("<circle cx=\"").append(number(centre.x())).append("\" cy=\"").append(number(centre.y()))
                .append("\" r=\"").append(number(radius)).append('"');
        attributes(ink);
    }

    void rectangle(double x, double y, double width, double height, double corner, Ink ink) {
        out.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" width=\"").append(number(width))
                .append("\" height=\"").append(number(height)).append('"');
        if (corner > 0) {
            out.append(" rx=\"").append(number(corner)).append('"');
        }
        attributes(ink);
    }

    void text(double x, double y, String text, Type type) {
        if (type.halo()) {
            // a stroke under the letters by a second element: painting order within one is not known to every reader
            textElement(x, y, text, type, " stroke=\"" + Palette.PAPER + "\" stroke-width=\"3.5\" stroke-linejoin=\"round\"", Palette.PAPER);
        }
        textElement(x, y, text, type, "", type.colour());
    }

    private void textElement(double x, double y, String text, Type type, String extra, String colour) {
        out.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" font-size=\"")
                .append(number(type.size())).append("\" fill=\"").append(colour).append('"');
        if (type.bold()) {
            out.append(" font-weight=\"700\"");
        }
        if (type.italic()) {
            out.append(" font-style=\"italic\"");
        }
        if (!type.anchor().equals("start")) {
            out.append(" text-anchor=\"").append(type.anchor()).append('"');
        }
        out.append(extra).append('>').append(SvgText.escape(text)).append("</text>\n");
    }

    /** A centred text on a plate of paper. */
    void plate(Point centre, String text, Type type) {
        double width = TextWidth.of(text, type.size(), type.bold()) * .98 + 6;
        rectangle(centre.x() - width / 2, centre.y() - type.size() * .62, width, type.size() * 1.2, 0, Ink.filled(Palette.PAPER));
        text(centre.x(), centre.y() + type.size() * .36, text, type.centred());
    }

    /** A line with a head at both ends. */
    void arrow(Point a, Point b, Ink ink, double head) {
        line(a, b, ink);
        double length = a.distance(b);
        if (length < 1) {
            return;
        }
        double ux = (b.x() - a.x()) / length;
        double uy = (b.y() - a.y()) / length;
        double size = Math.min(head, length * .45);
        arrowHead(b, ux, uy, size, ink.stroke());
        arrowHead(a, -ux, -uy, size, ink.stroke());
    }

    /** A line with a head at its end. */
    void dart(Point from, Point to, Ink ink, double head) {
        line(from, to, ink);
        double length = from.distance(to);
        if (length >= 1) {
            arrowHead(to, (to.x() - from.x()) / length, (to.y() - from.y()) / length, Math.min(head, length * .45), ink.stroke());
        }
    }

    private void arrowHead(Point tip, double ux, double uy, double size, String colour) {
        Point base = tip.plus(-ux * size, -uy * size);
        polygon(List.of(tip, base.plus(-uy * size * .38, ux * size * .38), base.plus(uy * size * .38, -ux * size * .38)), Ink.filled(colour));
    }

    /** A box with slanting lines, the look of a target band. */
    void hatched(double x, double y, double width, double height) {
        rectangle(x, y, width, height, 0, new Ink(Palette.BAND, Palette.GREEN, .7, null));
        StringBuilder d = new StringBuilder();
        for (double offset = 5; offset < width + height; offset += 5) {
            double x1 = x + Math.max(0, offset - height);
            double y1 = y + Math.min(height, offset);
            double x2 = x + Math.min(width, offset);
            double y2 = y + Math.max(0, offset - width);
            d.append('M').append(number(x1)).append(' ').append(number(y1)).append('L').append(number(x2)).append(' ').append(number(y2));
        }
        if (!d.isEmpty()) {
            path(d.toString(), Ink.line(Palette.HATCH, 1.2));
        }
    }

    static String outline(List<Point> points) {
        StringBuilder d = new StringBuilder();
        for (Point point : points) {
            d.append(d.isEmpty() ? 'M' : 'L').append(number(point.x())).append(' ').append(number(point.y()));
        }
        return d.toString();
    }

    private void attributes(Ink ink) {
        out.append(" fill=\"").append(ink.fill()).append('"');
        if (!ink.stroke().equals("none")) {
            out.append(" stroke=\"").append(ink.stroke()).append("\" stroke-width=\"").append(number2(ink.width())).append('"');
            if (ink.dash() != null) {
                out.append(" stroke-dasharray=\"").append(ink.dash()).append('"');
            }
            if (ink.dash() == null || ink.dash().equals(Ink.DOTS)) {
                out.append(" stroke-linecap=\"round\"");
            }
            out.append(" stroke-linejoin=\"round\"");
        }
        out.append("/>\n");
    }

    private static String number2(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
