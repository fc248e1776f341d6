package org.steadwork.drawing;

import java.awt.Color;
import java.awt.Font;
import java.util.Map;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** What the figures of a group have in common: no ground, no frame, no grid of the library's own. */
final class PlotLook {

    private static final Color QUIET = new Color(0x4a5563);

    private PlotLook() {
    }

    static void plain(XYPlot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    static TickAxis axis(Map<Double, TickAxis.Label> labels, double from, double to) {
        TickAxis axis = new TickAxis(labels, from, to);
        axis.setTickLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        axis.setTickLabelPaint(QUIET);
        return axis;
    }

    static JFreeChart chart(XYPlot plot) {
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }
}
