package org.steadwork.drawing;

import java.util.List;

/** Draws a working day as one strip from left to right: what is sat through, breaks, fixed times; hours beneath. */
public final class DayStrip {

    /** What a part of the day is; each differs by shape or hatching, not by colour alone. */
    public enum Kind { SITTING, MEETING, TOO_LONG, PAUSE, REST, ON_FEET }

    /**
     * @param from minutes after midnight
     * @param to   minutes after midnight, after {@code from}
     */
    public record Part(int from, int to, Kind kind, String words) {
    }

    private static final double TOP = 10;
    private static final double BAND = 34;
    private static final double EDGE = 16;
    private static final double HEIGHT = 76;
    private static final int HOUR = 60;
    private static final double ROOM_FOR_AN_HOUR = 44;

    private DayStrip() {
    }

    /**
     * @param from  start of the strip, minutes after midnight
     * @param to    its end, after {@code from}
     * @param width in pixels, at least 200; hours are written more sparsely on a narrow one
     * @param title says in words what the strip shows
     */
    public static String svg(int from, int to, List<Part> parts, int width, String title) {
        double scale = (width - 2 * EDGE) / (to - from);
        SvgMarkup svg = new SvgMarkup();
        svg.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", "0 0 " + width + " " + SvgMarkup.number(HEIGHT), "width", width, "height", HEIGHT, "role", "img",
                "aria-label", title, "font-family", "Liberation Sans, Arial, sans-serif", "font-size", "12");
        for (Part part : parts) {
            draw(svg, part, EDGE + (part.from() - from) * scale, (part.to() - part.from()) * scale);
        }
        svg.empty("line", "x1", EDGE, "x2", width - EDGE, "y1", TOP + BAND, "y2", TOP + BAND, "stroke", "#1d2733");
        int step = 1;
        while (step * HOUR * scale < ROOM_FOR_AN_HOUR) {
            step++;
        }
        for (int hour = (from + HOUR - 1) / HOUR; hour * HOUR <= to; hour++) {
            double x = EDGE + (hour * HOUR - from) * scale;
            svg.empty("line", "x1", x, "x2", x, "y1", TOP + BAND, "y2", TOP + BAND + 5, "stroke", "#1d2733");
            if ((hour - (from + HOUR - 1) / HOUR) % step == 0) {
                svg.open("text", "x", x, "y", TOP + BAND + 20, "text-anchor", "middle", "fill", "#4a5563").text(hour + ":00").close();
            }
        }
        return svg.close().done();
    }

    private static void draw(SvgMarkup svg, Part part, double x, double width) {
        svg.open("g").open("title").text(part.words()).close();
        switch (part.kind()) {
            case SITTING -> band(svg, x, width, "#efe9df", "#b9b1a3");
            case MEETING -> {
                band(svg, x, width, "#e0d8ca", "#8d8577");
                lines(svg, x, width, "#8d8577");
            }
            case TOO_LONG -> {
                band(svg, x, width, "#f6e3c5", "#a85410");
                lines(svg, x, width, "#a85410");
            }
            case PAUSE -> svg.empty("rect", "x", x, "y", TOP - 6, "width", Math.max(3, width), "height", BAND + 6, "fill", "#6b2d5c");
            case REST -> svg.empty("rect", "x", x, "y", TOP + BAND - 8, "width", width, "height", 8.0, "fill", "#6b2d5c");
            case ON_FEET -> svg.empty("rect", "x", x, "y", TOP + BAND - 8, "width", width, "height", 8.0, "fill", "none", "stroke", "#6b2d5c");
            default -> throw new IllegalStateException("No drawing for " + part.kind());
        }
        svg.close();
    }

    private static void band(SvgMarkup svg, double x, double width, String fill, String stroke) {
        svg.empty("rect", "x", x, "y", TOP, "width", width, "height", BAND, "fill", fill, "stroke", stroke);
    }

    private static void lines(SvgMarkup svg, double x, double width, String stroke) {
        for (double at = 5; at < width; at += 5) {
            svg.empty("line", "x1", x + at, "x2", x + at, "y1", TOP, "y2", TOP + BAND, "stroke", stroke, "stroke-width", 0.6);
        }
    }
}
