package org.steadwork.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.svg.SVGGraphics2D;

/**
 * The share of a group with an event by each day, one or two groups: steps, thin lines for the limits of a single group, and under the
 * axis how many were still followed.
 */
public final class CurvePlot {

    private static final Color INK = new Color(0x1d2733);
    private static final Color PLUM = new Color(0x6b2d5c);
    private static final Color HAIR = new Color(0xe2dcd1);
    private static final Color LIMIT = new Color(0x8d5f81);
    private static final int PLOT = 230;
    private static final int LINE = 20;
    private static final int MOST_TICKS = 7;
    private static final int[] STEPS = {1, 2, 7, 14, 28, 56, 91, 182, 364, 728};

    /** From a day on, in percent with the event, with limits; limits are NaN where there are none. */
    public record Point(double day, double share, double low, double high) {
    }

    /** One group: its steps in order, and how many are still followed just before a day. */
    public record Curve(String name, List<Point> points, double lastDay, ToDoubleFunction<Double> atRisk) {
        public Curve {
            points = List.copyOf(points);
        }
    }

    private CurvePlot() {
    }

    /** Draws one or two curves in three widths; {@code id} is unique on its page. */
    public static String figure(String id, String title, List<Curve> curves) {
        StringBuilder figure = new StringBuilder();
        for (PlotSize size : PlotSize.values()) {
            figure.append(draw(id + "-" + size.cssClass, title, curves, size));
        }
        return figure.toString();
    }

    /** Returns the days that are worth a tick, from 0 to at least one step: seven at most. */
    public static List<Integer> ticks(double lastDay) {
        int step = STEPS[STEPS.length - 1];
        for (int candidate : STEPS) {
            if (lastDay / candidate <= MOST_TICKS - 1) {
                step = candidate;
                break;
            }
        }
        List<Integer> ticks = new ArrayList<>();
        for (int day = 0; day <= Math.max(lastDay, step); day += step) {
            ticks.add(day);
        }
        return ticks;
    }

    private static String draw(String id, String title, List<Curve> curves, PlotSize size) {
        double last = Math.max(1, curves.stream().mapToDouble(Curve::lastDay).max().orElse(1));
        List<Integer> ticks = ticks(last);
        last = Math.max(last, ticks.get(ticks.size() - 1));
        int left = 52;
        int right = size.stacked() ? 16 : 30;
        int height = PLOT + LINE + 10 + LINE * (1 + (curves.size() > 1 ? 2 : 1) * curves.size());
        SVGGraphics2D canvas = PlainSvg.canvas(size.width, PLOT + LINE);
        chart(curves, ticks, last, left, right).draw(canvas, new Rectangle2D.Double(0, 0, size.width, PLOT + LINE), new ChartRenderingInfo());
        SvgMarkup text = new SvgMarkup();
        text.open("g");
        double y = PLOT + LINE + 20;
        text.open("text", "class", "t-b", "x", 0, "y", y).text("Days, and how many were still followed").close();
        for (int i = 0; i < curves.size(); i++) {
            if (curves.size() > 1) {
                y += LINE;
                text.empty("line", "x1", left, "x2", left + 24, "y1", y - 4, "y2", y - 4, "stroke", i == 0 ? "#6b2d5c" : "#1d2733", "stroke-width", "2.5",
                        "stroke-dasharray", i == 0 ? null : "7 4");
                text.open("text", "class", "t-b", "x", left + 32, "y", y).text(curves.get(i).name()).close();
            }
            y += LINE;
            for (int day : ticks) {
                double x = left + day / last * (size.width - left - right);
                text.open("text", "x", x, "y", y, "text-anchor", "middle")
                        .text(String.format(Locale.ROOT, "%.0f", curves.get(i).atRisk().applyAsDouble((double) day))).close();
            }
        }
        text.close();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + size.cssClass + "\" viewBox=\"0 0 " + size.width + " " + height + "\" width=\""
                + size.width + "\" height=\"" + height + "\" role=\"img\" focusable=\"false\" aria-labelledby=\"t-" + id + " d-" + id + "\"><title id=\"t-" + id
                + "\">" + SvgText.escape(title) + "</title><desc id=\"d-" + id + "\">" + SvgText.escape(words(curves, ticks)) + "</desc>\n"
                + PlainSvg.inside(canvas.getSVGElement()) + text.done() + "</svg>\n";
    }

    private static String words(List<Curve> curves, List<Integer> ticks) {
        StringBuilder words = new StringBuilder();
        for (Curve curve : curves) {
            words.append(curve.name()).append(": ");
            for (int day : ticks) {
                double share = curve.points().stream().filter(point -> point.day() <= day).reduce((a, b) -> b).map(Point::share).orElse(0.0);
                words.append(String.format(Locale.ROOT, "day %d %.0f %%; ", day, share));
            }
        }
        return words.toString().strip();
    }

    private static JFreeChart chart(List<Curve> curves, List<Integer> ticks, double last, int left, int right) {
        Map<Double, TickAxis.Label> days = new LinkedHashMap<>();
        ticks.forEach(day -> days.put((double) day, new TickAxis.Label(String.valueOf(day), TextAnchor.TOP_CENTER)));
        Map<Double, TickAxis.Label> shares = new LinkedHashMap<>();
        for (int share = 0; share <= 100; share += 25) {
            shares.put((double) share, new TickAxis.Label(share == 100 ? "100\u00a0%" : String.valueOf(share), TextAnchor.CENTER_RIGHT));
        }
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(PlotLook.axis(days, 0, last));
        plot.setRangeAxis(PlotLook.axis(shares, 0, 100));
        PlotLook.plain(plot);
        plot.setInsets(new RectangleInsets(12, left, LINE, right));
        plot.setFixedDomainAxisSpace(new AxisSpace());
        plot.setFixedRangeAxisSpace(new AxisSpace());
        for (double share = 0; share <= 100; share += 25) {
            ValueMarker line = new ValueMarker(share, share == 0 ? INK : HAIR, new BasicStroke(1));
            line.setAlpha(1);
            plot.addRangeMarker(line, Layer.BACKGROUND);
        }
        int index = 0;
        if (curves.size() == 1) {
            step(plot, index++, curves.get(0), Point::low, LIMIT, new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 3}, 0));
            step(plot, index++, curves.get(0), Point::high, LIMIT, new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 3}, 0));
        }
        for (int i = 0; i < curves.size(); i++) {
            step(plot, index++, curves.get(i), Point::share, i == 0 ? PLUM : INK, i == 0 ? new BasicStroke(2.5f)
                    : new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
        }
        return PlotLook.chart(plot);
    }

    private static void step(XYPlot plot, int index, Curve curve, ToDoubleFunction<Point> height, Color colour, BasicStroke stroke) {
        XYSeries series = new XYSeries("s" + index);
        series.add(0, 0);
        double now = 0;
        for (Point point : curve.points()) {
            double value = height.applyAsDouble(point);
            if (!Double.isNaN(value)) {
                now = value;
                series.add(point.day(), value);
            }
        }
        series.add(curve.lastDay(), now);
        XYStepRenderer renderer = new XYStepRenderer();
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesStroke(0, stroke);
        plot.setDataset(index, new XYSeriesCollection(series));
        plot.setRenderer(index, renderer);
    }
}
