package org.steadwork.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Builds the chart of a trend: axes, band, lines, scores and the squares of the visits. */
final class TrendPlot {

    static final Color INK = new Color(0x1d2733);
    static final Color QUIET = new Color(0x56606b);
    static final Color PLUM = new Color(0x6b2d5c);
    private static final Color PAPER = new Color(0xfaf7f2);
    private static final Color HAIR = new Color(0xe2dcd1);
    private static final Color ERROR_BAND = new Color(0xe8e6e3);
    private static final Color MARK = new Color(0xa39d92);
    private static final double[] STEPS = {.5, 1, 2, 5, 10, 20, 25, 50, 100, 200, 500};
    private static final int DATE_GAP = 8;

    private final Trend trend;
    private final TrendSize size;
    private final TrendFrame frame;
    private final TrendWords words;
    /** Below the lowest score lie the squares of the visits: this far, as a share of the instrument's range. */
    private final double squaresBelow;

    TrendPlot(TrendFrame frame) {
        this.frame = frame;
        trend = frame.trend;
        size = frame.size;
        words = new TrendWords(trend);
        squaresBelow = 8. / (plotHeight() - 14);
    }

    private double plotHeight() {
        return size.height - size.top - size.bottom + 14;
    }

    double range() {
        return trend.highest() - trend.lowest();
    }

    /** The y value at the bottom of the plot, under the squares. */
    double bottom() {
        return trend.lowest() - range() * 14 / (plotHeight() - 14);
    }

    double firstDay() {
        return trend.day(trend.lastDay()) == 0 ? -1 : 0;
    }

    double lastDay() {
        return Math.max(1, trend.day(trend.lastDay()));
    }

    /** Where a day stands in the plot. */
    double x(LocalDate date, Rectangle2D area) {
        return area.getX() + (trend.day(date) - firstDay()) / (lastDay() - firstDay()) * area.getWidth();
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(frame.top(), size.left, size.bottom - 14., size.right));
        plot.setFixedDomainAxisSpace(new AxisSpace());
        plot.setFixedRangeAxisSpace(new AxisSpace());
        plot.setDomainAxis(dates());
        plot.setRangeAxis(scores());
        lines(plot);
        series(plot, 0, scored(), point(size.small() ? 4.5 : 5), PLUM, PLUM, trend.scored().size() >= TrendChart.LEAST_FOR_A_LINE);
        series(plot, 1, visits(true), square(), INK, INK, false);
        series(plot, 2, visits(false), square(), PAPER, QUIET, false);
        marks(plot);
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    /** The first and the last visit, and between them every visit whose date has room. */
    private TickAxis dates() {
        Map<Double, TickAxis.Label> labels = new LinkedHashMap<>();
        int last = trend.visits().size() - 1;
        double[] start = span(0);
        double[] end = span(last);
        date(labels, 0, start);
        if (last > 0 && end[0] >= start[1] + DATE_GAP) {
            date(labels, last, end);
        }
        double roomFrom = start[1];
        for (int i = 1; i < last && !size.small(); i++) {
            double[] span = span(i);
            if (span[0] >= roomFrom + DATE_GAP && span[1] + DATE_GAP <= end[0]) {
                date(labels, i, span);
                roomFrom = span[1];
            }
        }
        return styled(new TickAxis(labels, firstDay(), lastDay()));
    }

    private void date(Map<Double, TickAxis.Label> labels, int visit, double[] span) {
        TextAnchor anchor = span[0] <= 0 ? TextAnchor.TOP_LEFT : span[1] >= frame.plotWidth() ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_CENTER;
        labels.put((double) trend.day(trend.visits().get(visit).date()), new TickAxis.Label(words.tick(trend.visits().get(visit).date()), anchor));
    }

    /** Where the date of a visit begins and ends along the axis, 0 being the left end of the plot. */
    private double[] span(int visit) {
        LocalDate date = trend.visits().get(visit).date();
        double x = (trend.day(date) - firstDay()) / (lastDay() - firstDay()) * frame.plotWidth();
        double width = TextWidth.of(words.tick(date), 13, false);
        double from = Math.max(0, Math.min(x - width / 2, frame.plotWidth() - width));
        return new double[] {from, from + width};
    }

    private TickAxis scores() {
        Map<Double, TickAxis.Label> labels = new LinkedHashMap<>();
        for (double value : ticks()) {
            labels.put(value, new TickAxis.Label(TrendWords.plain(value), TextAnchor.CENTER_RIGHT));
        }
        return styled(new TickAxis(labels, bottom(), trend.highest()));
    }

    private static TickAxis styled(TickAxis axis) {
        axis.setTickLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        axis.setTickLabelPaint(QUIET);
        return axis;
    }

    /** Round values from the lowest to the highest score, at most six (three in a small chart). */
    private double[] ticks() {
        int most = size.small() ? 2 : 5;
        double step = range();
        for (double candidate : STEPS) {
            if (range() / candidate <= most + 1e-9) {
                step = candidate;
                break;
            }
        }
        double first = Math.ceil(trend.lowest() / step - 1e-9) * step;
        int count = (int) Math.floor((trend.highest() - first) / step + 1e-9) + 1;
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = first + i * step;
        }
        return values;
    }

    /** Band, grid, importance and the axis, in this order, all behind the scores. */
    private void lines(XYPlot plot) {
        Double baseline = trend.baseline();
        if (baseline != null && trend.error() != null) {
            double from = Math.max(trend.lowest(), baseline - trend.error());
            double to = Math.min(trend.highest(), baseline + trend.error());
            IntervalMarker band = new IntervalMarker(from, to);
            band.setPaint(ERROR_BAND);
            band.setAlpha(1);
            band.setOutlinePaint(null);
            plot.addRangeMarker(band, Layer.BACKGROUND);
            for (double edge : new double[] {from, to}) {
                line(plot, edge, QUIET, new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {1, 3}, 0));
            }
        }
        for (double value : ticks()) {
            line(plot, value, HAIR, new BasicStroke(1));
        }
        if (trend.importantFrom() != null) {
            line(plot, trend.importantFrom(), INK, new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
        }
        line(plot, trend.lowest(), INK, new BasicStroke(1));
    }

    private static void line(XYPlot plot, double value, Color colour, BasicStroke stroke) {
        ValueMarker marker = new ValueMarker(value, colour, stroke);
        marker.setAlpha(1);
        plot.addRangeMarker(marker, Layer.BACKGROUND);
    }

    private XYSeries scored() {
        XYSeries series = new XYSeries("scores");
        trend.scored().forEach(v -> series.add((double) trend.day(v.date()), v.score()));
        return series;
    }

    private XYSeries visits(boolean withScore) {
        XYSeries series = new XYSeries(withScore ? "visits with a score" : "visits without a score");
        double y = trend.lowest() - range() * squaresBelow;
        trend.visits().stream().filter(v -> v.score() != null == withScore).forEach(v -> series.add((double) trend.day(v.date()), y));
        return series;
    }

    /** A line from each change of the plan to the time axis, behind everything but the band. */
    private void marks(XYPlot plot) {
        if (trend.marks().isEmpty()) {
            return;
        }
        XYSeriesCollection lines = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int i = 0; i < trend.marks().size(); i++) {
            XYSeries line = new XYSeries(PlanMark.letter(i));
            line.add((double) trend.day(trend.marks().get(i).date()), bottom());
            line.add((double) trend.day(trend.marks().get(i).date()), trend.highest());
            lines.addSeries(line);
            renderer.setSeriesPaint(i, MARK);
            renderer.setSeriesStroke(i, new BasicStroke(1));
        }
        plot.setDataset(3, lines);
        plot.setRenderer(3, renderer);
    }

    private static void series(XYPlot plot, int index, XYSeries series, Shape shape, Color fill, Color edge, boolean line) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(line, true);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, fill);
        renderer.setSeriesStroke(0, new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        renderer.setSeriesShape(0, shape);
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(0, fill);
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(0, shape instanceof Ellipse2D ? PAPER : edge);
        renderer.setSeriesOutlineStroke(0, new BasicStroke(shape instanceof Ellipse2D ? 2 : 1));
        plot.setDataset(index, new XYSeriesCollection(series));
        plot.setRenderer(index, renderer);
    }

    private static Shape point(double radius) {
        return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
    }

    /** The squares of visits that lie close together are smaller, so that each can still be told from the next. */
    private Shape square() {
        double half = Math.max(1, Math.min(3, (closestVisits() - 2) / 2));
        return new Rectangle2D.Double(-half, -half, 2 * half, 2 * half);
    }

    /** The least distance between two visits along the axis; that of the whole axis when there is one visit only. */
    private double closestVisits() {
        double aDay = frame.plotWidth() / (lastDay() - firstDay());
        double closest = frame.plotWidth();
        for (int i = 1; i < trend.visits().size(); i++) {
            closest = Math.min(closest, (trend.day(trend.visits().get(i).date()) - trend.day(trend.visits().get(i - 1).date())) * aDay);
        }
        return closest;
    }
}
