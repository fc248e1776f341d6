package org.steadwork.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** The changes of the plan: a lettered shape over the plot for each, a line down to its day, and the key underneath. */
final class TrendMarks {

    private static final double HALF = 9;
    private static final String SHAPE = "fill=\"#ffffff\" stroke=\"#1d2733\" stroke-width=\"1.5\"";

    private final TrendFrame frame;
    private final Rectangle2D area;
    private final TrendPlot plot;
    private final StringBuilder out = new StringBuilder();

    TrendMarks(TrendFrame frame, Rectangle2D area, TrendPlot plot) {
        this.frame = frame;
        this.area = area;
        this.plot = plot;
    }

    String draw() {
        List<PlanMark> marks = frame.trend.marks();
        for (int row = 0; row < frame.rows; row++) {
            row(row);
        }
        for (int i = 0; i < frame.key.size(); i++) {
            double y = frame.keyLine(i);
            shape(marks.get(i).kind(), 12, y - 4.5, PlanMark.letter(i));
            for (int line = 0; line < frame.key.get(i).size(); line++) {
                out.append(text(TrendFrame.KEY_INDENT, y + line * TrendFrame.KEY_LINE, frame.key.get(i).get(line),
                        "font-size=\"13\" fill=\"#1d2733\"", "start"));
            }
        }
        return out.toString();
    }

    /** Every so many-th mark, so that the marks of a row lie as far apart as they can. */
    private void row(int row) {
        List<PlanMark> marks = frame.trend.marks();
        int count = (marks.size() - row + frame.rows - 1) / frame.rows;
        double[] wanted = new double[count];
        double[] widths = new double[count];
        for (int i = 0; i < count; i++) {
            wanted[i] = plot.x(marks.get(row + i * frame.rows).date(), area);
            widths[i] = TrendFrame.MARK - 1;
        }
        double[] middles = Spread.middles(wanted, widths, frame.size.left - HALF, frame.size.width - frame.size.right + HALF, 1);
        double y = area.getY() - TrendFrame.MARK_GAP - HALF - row * TrendFrame.MARK;
        for (int i = 0; i < count; i++) {
            out.append("<path d=\"M").append(number(middles[i])).append(' ').append(number(y + HALF)).append('L').append(number(wanted[i]))
                    .append(' ').append(number(area.getY())).append("\" fill=\"none\" stroke=\"#56606b\" stroke-width=\"1\"/>\n");
            shape(marks.get(row + i * frame.rows).kind(), middles[i], y, PlanMark.letter(row + i * frame.rows));
        }
    }

    private void shape(PlanMark.Kind kind, double x, double y, String letter) {
        String circle = "<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(HALF) + "\" " + SHAPE + "/>\n";
        out.append(switch (kind) {
            case PROGRAMME -> circle;
            case WORK_PLACE -> "<rect x=\"" + number(x - 8) + "\" y=\"" + number(y - 8) + "\" width=\"16\" height=\"16\" " + SHAPE + "/>\n";
            case WORK_STATUS -> polygon(x, y, 0, -10.5, 10, 0, 0, 10.5, -10, 0);
            case OTHER -> polygon(x, y, -5.5, -9, 5.5, -9, 10, 0, 5.5, 9, -5.5, 9, -10, 0);
        });
        out.append(text(x, y + 4.5, letter, "class=\"t-b\" font-size=\"13\" font-weight=\"700\" fill=\"#1d2733\"", "middle"));
    }

    private static String polygon(double x, double y, double... corners) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < corners.length; i += 2) {
            points.append(i == 0 ? "" : " ").append(number(x + corners[i])).append(',').append(number(y + corners[i + 1]));
        }
        return "<polygon points=\"" + points + "\" " + SHAPE + "/>\n";
    }

    static String number(double value) {
        return PlainSvg.rounded(String.valueOf(value));
    }

    static String text(double x, double y, String text, String looks, String anchor) {
        return "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" " + looks + (anchor.equals("start") ? "" : " text-anchor=\"" + anchor + "\"")
                + ">" + SvgText.escape(text) + "</text>\n";
    }
}
