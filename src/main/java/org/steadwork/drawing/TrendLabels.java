package org.steadwork.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** The words on a trend: its scores, and what band and dashed line mean. */
final class TrendLabels {

    private static final String VALUE = "class=\"t-p\" font-size=\"15\" font-weight=\"700\"";
    private static final double APART = 38;
    private static final int MOST_VALUES = 6;

    private final Trend trend;
    private final TrendSize size;
    private final Rectangle2D area;
    private final TrendPlot plot;
    private final TrendWords words;
    private final StringBuilder out = new StringBuilder();

    TrendLabels(Trend trend, TrendSize size, Rectangle2D area, TrendPlot plot) {
        this.trend = trend;
        this.size = size;
        this.area = area;
        this.plot = plot;
        words = new TrendWords(trend);
    }

    String draw() {
        if (size == TrendSize.WIDE) {
            beside();
        } else if (!size.small()) {
            inside();
        }
        values();
        return out.toString();
    }

    private double x(Trend.Visit visit) {
        return area.getX() + (trend.day(visit) - plot.firstDay()) / (plot.lastDay() - plot.firstDay()) * area.getWidth();
    }

    private double y(double score) {
        return area.getMaxY() - (score - plot.bottom()) / (trend.highest() - plot.bottom()) * area.getHeight();
    }

    /** Every score in a large chart with room for it, else the last one alone. */
    private void values() {
        List<Trend.Visit> scored = trend.scored();
        boolean all = !size.small() && scored.size() <= MOST_VALUES;
        for (int i = 0; i < scored.size(); i++) {
            boolean last = i == scored.size() - 1;
            if (!all && !last) {
                continue;
            }
            double score = scored.get(i).score();
            // away from the line: under the end of a fall, else over the point
            boolean under = last && i > 0 && scored.get(i - 1).score() > score && !size.small();
            double x = x(scored.get(i));
            double y = y(score) + (under ? 20 : y(score) < 24 ? 22 : -11);
            String anchor = i == 0 && !last ? "start" : last && i > 0 ? "end" : "middle";
            value(anchor.equals("start") ? x + 2 : anchor.equals("end") ? x + 4 : x, y, words.score(score), anchor);
        }
    }

    /** Twice: a rim of paper under the figure, so that lines do not run through it. */
    private void value(double x, double y, String text, String anchor) {
        text(x, y, text, VALUE + " fill=\"#faf7f2\" stroke=\"#faf7f2\" stroke-width=\"4\" stroke-linejoin=\"round\" aria-hidden=\"true\"", anchor);
        text(x, y, text, VALUE + " fill=\"#6b2d5c\"", anchor);
    }

    private boolean band() {
        return trend.baseline() != null && trend.error() != null;
    }

    private double bandMiddle() {
        return (y(Math.min(trend.highest(), trend.baseline() + trend.error())) + y(Math.max(trend.lowest(), trend.baseline() - trend.error()))) / 2;
    }

    private void beside() {
        double x = area.getMaxX() + 12;
        double error = band() ? bandMiddle() : Double.NaN;
        double important = trend.importantFrom() == null ? Double.NaN : y(trend.importantFrom());
        if (Math.abs(error - important) < APART) {
            double middle = (error + important) / 2;
            double half = error <= important ? -APART / 2 : APART / 2;
            error = middle + half;
            important = middle - half;
        }
        if (band()) {
            bold(x, error - 4, "Within measurement error");
            quiet(x, error + 13, words.errorLine());
        }
        if (trend.importantFrom() != null) {
            bold(x, important - 1, words.importantFrom());
            quiet(x, important + 16, words.importanceLine());
        }
    }

    private void inside() {
        double x = area.getMaxX() - 4;
        double error = band() ? y(Math.min(trend.highest(), trend.baseline() + trend.error())) + 15 : Double.NaN;
        double important = trend.importantFrom() == null ? Double.NaN : y(trend.importantFrom()) - 5;
        if (band()) {
            judging(x, error, "Within error");
        }
        if (trend.importantFrom() != null) {
            boolean meets = Math.abs(important - error) < 15;
            judging(x, meets ? important + 20 : important, words.importantFrom());
        }
    }

    private void bold(double x, double y, String text) {
        text(x, y, text, "class=\"t-b\" font-size=\"13\" font-weight=\"700\" fill=\"#1d2733\"", "start");
    }

    private void quiet(double x, double y, String text) {
        text(x, y, text, "font-size=\"13\" fill=\"#56606b\"", "start");
    }

    /** A word beside a line it explains, with a rim of paper by the page's style sheet. */
    private void judging(double x, double y, String text) {
        text(x, y, text, "class=\"halo\" font-size=\"13\" fill=\"#56606b\"", "end");
    }

    private void text(double x, double y, String text, String looks, String anchor) {
        out.append("<text x=\"").append(PlainSvg.rounded(String.valueOf(x))).append("\" y=\"").append(PlainSvg.rounded(String.valueOf(y)))
                .append("\" ").append(looks).append(anchor.equals("start") ? "" : " text-anchor=\"" + anchor + "\"").append('>')
                .append(PlainSvg.escape(text)).append("</text>\n");
    }
}
