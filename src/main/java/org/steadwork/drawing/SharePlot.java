package org.steadwork.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.svg.SVGGraphics2D;

/** Shares with their intervals, one under the other: a dot on a line from limit to limit, on a scale from 0 to 100 %. */
public final class SharePlot {

    private static final Color INK = new Color(0x1d2733);
    private static final Color PLUM = new Color(0x6b2d5c);
    private static final Color HAIR = new Color(0xe2dcd1);
    private static final int ROW = 34;
    private static final int STACKED_ROW = 48;
    /** A label takes two lines at most. */
    private static final int LINE = 15;
    private static final int EDGE = 6;
    private static final int FOOT = 28;
    private static final double[] QUARTERS = {0, 25, 50, 75, 100};

    /**
     * One row.
     *
     * @param note the counts, at the end of the row
     * @param share in percent, 0 to 100, with its limits
     */
    public record Row(String label, String note, double share, double low, double high) {
    }

    private SharePlot() {
    }

    /** Draws the rows in three widths, one after the other; {@code id} is unique on its page. Nothing for no rows. */
    public static String figure(String id, String title, List<Row> rows) {
        StringBuilder figure = new StringBuilder();
        if (!rows.isEmpty()) {
            for (PlotSize size : PlotSize.values()) {
                figure.append(draw(id + "-" + size.cssClass, title, rows, size));
            }
        }
        return figure.toString();
    }

    private static String draw(String id, String title, List<Row> rows, PlotSize size) {
        List<List<String>> labels = rows.stream().map(one -> lines(one, size)).toList();
        boolean two = labels.stream().anyMatch(lines -> lines.size() > 1);
        int row = size.stacked() ? STACKED_ROW + (two ? LINE : 0) : ROW;
        int plot = row * rows.size();
        int left = size.stacked() ? 4 : size.left;
        SVGGraphics2D canvas = PlainSvg.canvas(size.width, plot + FOOT);
        chart(rows, left, size.stacked() ? 14 : size.right).draw(canvas, new Rectangle2D.Double(0, 0, size.width, plot + FOOT), new ChartRenderingInfo());
        SvgMarkup text = new SvgMarkup();
        text.open("g");
        for (int i = 0; i < rows.size(); i++) {
            double y = i * row + (size.stacked() ? LINE : row / 2.0 + 4.5);
            double first = size.stacked() ? y : y - (labels.get(i).size() - 1) * LINE / 2.0;
            for (int line = 0; line < labels.get(i).size(); line++) {
                text.open("text", "class", "t-b halo", "x", size.stacked() ? left + EDGE : 0, "y", first + line * LINE).text(labels.get(i).get(line)).close();
            }
            text.open("text", "class", "halo", "x", size.stacked() ? size.width - 14 - EDGE : size.width, "y", y, "text-anchor", "end")
                    .text(rows.get(i).note()).close();
        }
        text.close();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + size.cssClass + "\" viewBox=\"0 0 " + size.width + " " + (plot + FOOT)
                + "\" width=\"" + size.width + "\" height=\"" + (plot + FOOT) + "\" role=\"img\" focusable=\"false\" aria-labelledby=\"t-" + id + " d-" + id
                + "\"><title id=\"t-" + id + "\">" + SvgText.escape(title) + "</title><desc id=\"d-" + id + "\">" + SvgText.escape(words(rows))
                + "</desc>\n" + PlainSvg.inside(canvas.getSVGElement()) + text.done() + "</svg>\n";
    }

    /** The figure in words. */
    static String words(List<Row> rows) {
        StringBuilder words = new StringBuilder();
        rows.forEach(row -> words.append(String.format(Locale.ROOT, "%s: %s, %.0f %%, interval %.0f to %.0f %%. ", row.label(), row.note(), row.share(),
                row.low(), row.high())));
        return words.toString().strip();
    }

    /** The label in the lines it needs beside the plot, or above its row on a narrow one; what is longer than two lines is cut. */
    private static List<String> lines(Row row, PlotSize size) {
        double room = size.stacked() ? size.width - 18 - 2 * EDGE - TextWidth.of(row.note(), 13, false) - 12 : size.left - 12;
        List<String> lines = TextWidth.wrap(row.label(), 13, room, true);
        return lines.size() < 2 ? lines : List.of(lines.get(0), fitted(String.join(" ", lines.subList(1, lines.size())), room));
    }

    private static String fitted(String label, double room) {
        String fitted = label;
        while (fitted.length() > 2 && TextWidth.of(fitted, 13, true) > room) {
            fitted = fitted.substring(0, fitted.length() - 2).stripTrailing() + "…";
        }
        return fitted;
    }

    private static JFreeChart chart(List<Row> rows, int left, int right) {
        XYIntervalSeries series = new XYIntervalSeries("shares", false, true);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            // stacked rows keep the upper part for their label
            double y = rows.size() - 0.5 - i - (right == 14 ? 0.2 : 0);
            series.add(row.share(), row.low(), row.high(), y, y, y);
        }
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(series);
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawYError(false);
        renderer.setCapLength(0);
        renderer.setErrorPaint(INK);
        renderer.setErrorStroke(new BasicStroke(2));
        renderer.setSeriesPaint(0, PLUM);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-5.5, -5.5, 11, 11));
        XYPlot plot = new XYPlot(data, axis(), new TickAxis(Map.of(), 0, rows.size()), renderer);
        PlotLook.plain(plot);
        plot.setInsets(new RectangleInsets(0, left, FOOT, right));
        plot.setFixedDomainAxisSpace(new AxisSpace());
        plot.setFixedRangeAxisSpace(new AxisSpace());
        for (double quarter : QUARTERS) {
            ValueMarker line = new ValueMarker(quarter, quarter == 0 ? INK : HAIR, new BasicStroke(1));
            line.setAlpha(1);
            plot.addDomainMarker(line, Layer.BACKGROUND);
        }
        return PlotLook.chart(plot);
    }

    private static TickAxis axis() {
        return PlotLook.axis(Map.of(0.0, new TickAxis.Label("0", TextAnchor.TOP_LEFT), 25.0, new TickAxis.Label("25", TextAnchor.TOP_CENTER),
                50.0, new TickAxis.Label("50", TextAnchor.TOP_CENTER), 75.0, new TickAxis.Label("75", TextAnchor.TOP_CENTER),
                100.0, new TickAxis.Label("100 %", TextAnchor.TOP_RIGHT)), 0, 100);
    }
}
