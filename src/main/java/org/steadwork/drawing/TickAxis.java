package org.steadwork.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.Tick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis with labels at given values only: the dates of visits, the round scores of an instrument. */
final class TickAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    /** A label and the point of it that stands at the value. */
    record Label(String text, TextAnchor anchor) {
    }

    private final transient Map<Double, Label> labels;

    TickAxis(Map<Double, Label> labels, double from, double to) {
        this.labels = labels;
        setRange(from, to);
        setAxisLineVisible(false);
        setTickMarksVisible(false);
    }

    @Override
    public List<Tick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<Tick> ticks = new ArrayList<>();
        labels.forEach((value, label) -> ticks.add(new NumberTick(value, label.text(), label.anchor(), label.anchor(), 0)));
        return ticks;
    }
}
