package org.steadwork.drawing.figure;

import java.util.List;
import org.steadwork.drawing.SvgText;

/** Writes shapes of a figure with presentation attributes only. Numbers are rounded to a tenth of a unit. */
final class Svg {

    static final String INK = "#1d2733";
    static final String PAPER = "#faf7f2";
    static final String PLUM = "#6b2d5c";
    static final String WHITE = "#ffffff";
    static final String GREY_LINE = "#8d939b";
    static final String RULE = "#d9d3c8";

    private Svg() {
    }

    static String num(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : Double.toString(tenths / 10.0);
    }

    static String xy(double x, double y) {
        return num(x) + " " + num(y);
    }

    static String line(Point from, Point to) {
        return "M" + xy(from.x(), from.y()) + "L" + xy(to.x(), to.y());
    }

    static String fill(String d, String colour) {
        return "<path d=\"" + d + "\" fill=\"" + colour + "\"/>";
    }

    /** A shape with an outline that lies wholly outside it. */
    static String solid(String d, String colour, double outline) {
        return "<path d=\"" + d + "\" fill=\"" + colour + "\" stroke=\"" + colour + "\" stroke-width=\"" + num(outline)
                + "\" stroke-linejoin=\"round\"/>";
    }

    static String filled(String d, String fill, String stroke, double width) {
        return "<path d=\"" + d + "\" fill=\"" + fill + "\" stroke=\"" + stroke + "\" stroke-width=\"" + num(width) + "\"/>";
    }

    static String stroke(String d, String colour, double width) {
        return "<path d=\"" + d + "\" fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + num(width) + "\" stroke-linecap=\"round\"/>";
    }

    static String polygon(List<Point> corners, String fill, String stroke, double width) {
        StringBuilder points = new StringBuilder();
        for (Point p : corners) {
            points.append(points.length() == 0 ? "" : " ").append(num(p.x())).append(',').append(num(p.y()));
        }
        return "<polygon points=\"" + points + "\" fill=\"" + fill + "\" stroke=\"" + stroke + "\" stroke-width=\"" + num(width)
                + "\" stroke-linejoin=\"round\"/>";
    }

    static String circle(Point at, double r, String attributes) {
        return "<circle cx=\"" + num(at.x()) + "\" cy=\"" + num(at.y()) + "\" r=\"" + num(r) + "\" " + attributes + "/>";
    }

    static String rect(String id, double x, double y, double width, double height) {
        return "<clipPath id=\"" + id + "\"><rect x=\"" + num(x) + "\" y=\"" + num(y) + "\" width=\"" + num(width) + "\" height=\""
                + num(height) + "\" rx=\"6\"/></clipPath>";
    }

    static String text(Point at, double size, String colour, String anchor, String text) {
        return "<text x=\"" + num(at.x()) + "\" y=\"" + num(at.y()) + "\"" + (anchor.isEmpty() ? "" : " text-anchor=\"" + anchor + "\"")
                + " font-family=\"sans-serif\" font-size=\"" + num(size) + "\" font-weight=\"700\" fill=\"" + colour + "\">"
                + SvgText.escape(text) + "</text>";
    }
}
