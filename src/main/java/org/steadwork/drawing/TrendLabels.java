package org.steadwork.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import org.steadwork.drawing.LabelPlaces.Place;

/** The words on a trend: its scores, and what band and dashed line mean. */
final class TrendLabels {

    private static final double APART = 38;
    private static final int MOST_VALUES = 12;
    private static final double POINT = 6;

    private final Trend trend;
    private final TrendSize size;
    private final Rectangle2D area;
    private final TrendPlot plot;
    private final TrendWords words;
    private final LabelPlaces places;
    private final StringBuilder out = new StringBuilder();

    TrendLabels(TrendFrame frame, Rectangle2D area, TrendPlot plot) {
        trend = frame.trend;
        size = frame.size;
        this.area = area;
        this.plot = plot;
        words = new TrendWords(trend);
        places = new LabelPlaces(new Rectangle2D.Double(0, frame.top() - 14, size.width, area.getMaxY() - frame.top()));
    }

    String draw() {
        obstacles();
        values();
        if (size == TrendSize.WIDE) {
            beside();
        } else if (!size.small()) {
            inside();
        }
        return out.toString();
    }

    private double x(Trend.Visit visit) {
        return plot.x(visit.date(), area);
    }

    private double y(double score) {
        return area.getMaxY() - (score - plot.bottom()) / (trend.highest() - plot.bottom()) * area.getHeight();
    }

    private void obstacles() {
        List<Trend.Visit> scored = trend.scored();
        for (int i = 0; i < scored.size(); i++) {
            double x = x(scored.get(i));
            double y = y(scored.get(i).score());
            places.take(new Rectangle2D.Double(x - POINT, y - POINT, 2 * POINT, 2 * POINT));
            if (i > 0 && scored.size() >= TrendChart.LEAST_FOR_A_LINE) {
                places.line(.3, x(scored.get(i - 1)), y(scored.get(i - 1).score()), x, y);
            }
        }
        trend.marks().forEach(mark -> places.line(.1, plot.x(mark.date(), area), area.getY(), plot.x(mark.date(), area), area.getMaxY()));
        if (trend.importantFrom() != null) {
            places.line(.2, area.getX(), y(trend.importantFrom()), area.getMaxX(), y(trend.importantFrom()));
        }
    }

    /** The last score always, the first in a large chart, and every other where all find room. */
    private void values() {
        List<Trend.Visit> scored = trend.scored();
        int last = scored.size() - 1;
        if (last < 0) {
            return;
        }
        value(last);
        if (size.small() || last == 0) {
            return;
        }
        value(0);
        if (scored.size() > MOST_VALUES) {
            return;
        }
        List<Place> between = new ArrayList<>();
        for (int i = 1; i < last; i++) {
            Place place = places.best(around(i));
            if (covers(place, between)) {
                return;
            }
            between.add(place);
        }
        for (int i = 1; i < last; i++) {
            write(between.get(i - 1), words.score(scored.get(i).score()));
        }
    }

    private boolean covers(Place place, List<Place> others) {
        return places.touches(place) || others.stream().anyMatch(other -> other.box().intersects(place.box()));
    }

    private void value(int i) {
        write(places.best(around(i)), words.score(trend.scored().get(i).score()));
    }

    /** Over and under the point, then beside it; under the end of a fall first, away from the line. */
    private List<Place> around(int i) {
        List<Trend.Visit> scored = trend.scored();
        double score = scored.get(i).score();
        String text = words.score(score);
        double x = x(scored.get(i));
        double y = y(score);
        double half = TextWidth.of(text, 15, true) / 2;
        double inside = Math.min(Math.max(x, area.getX() + half - 2), size.width - half);
        boolean fell = i > 0 && scored.get(i - 1).score() > score;
        List<Place> places = new ArrayList<>();
        for (double dy : fell ? new double[] {21, -11} : new double[] {-11, 21}) {
            places.add(place(inside, y + dy, "middle", text));
            places.add(place(Math.max(inside - half * .8, area.getX() + half - 2), y + dy, "middle", text));
            places.add(place(Math.min(inside + half * .8, size.width - half), y + dy, "middle", text));
        }
        // beside a wide plot stands what band and dashed line mean
        if (size != TrendSize.WIDE || x + 10 + 2 * half <= area.getMaxX()) {
            places.add(place(x + 10, y + 5, "start", text));
        }
        if (x - 10 - 2 * half > area.getX()) {
            places.add(place(x - 10, y + 5, "end", text));
        }
        return places;
    }

    private static Place place(double x, double y, String anchor, String text) {
        return Place.of(x, y, anchor, text, 15, true);
    }

    /** Twice: a rim of paper under the figure, so that lines do not run through it. */
    private void write(Place place, String text) {
        twice(place, text, "class=\"t-p\" font-size=\"15\" font-weight=\"700\"", "#6b2d5c");
    }

    private void twice(Place place, String text, String font, String ink) {
        places.take(place.box());
        out.append(TrendMarks.text(place.x(), place.y(), text,
                font + " fill=\"#faf7f2\" stroke=\"#faf7f2\" stroke-width=\"4\" stroke-linejoin=\"round\" aria-hidden=\"true\"", place.anchor()));
        out.append(TrendMarks.text(place.x(), place.y(), text, font + " fill=\"" + ink + "\"", place.anchor()));
    }

    private boolean band() {
        return trend.baseline() != null && trend.error() != null;
    }

    private double bandEdge(int sign) {
        return y(Math.min(trend.highest(), Math.max(trend.lowest(), trend.baseline() + sign * trend.error())));
    }

    private void beside() {
        double x = area.getMaxX() + 12;
        double error = band() ? (bandEdge(1) + bandEdge(-1)) / 2 : Double.NaN;
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

    /** Beside the lines they explain, importance on its important side, at the end of the plot or wherever along the line there is room. */
    private void inside() {
        if (trend.importantFrom() != null) {
            double y = y(trend.importantFrom());
            judging(words.importantFrom(), trend.lowerIsBetter() ? y + 15 : y - 5, trend.lowerIsBetter() ? y - 5 : y + 15);
        }
        if (band()) {
            judging("Within error", bandEdge(1) + 15, bandEdge(-1) - 5, (bandEdge(1) + bandEdge(-1)) / 2 + 4, bandEdge(1) - 5, bandEdge(-1) + 15);
        }
    }

    private void judging(String text, double... heights) {
        List<Place> candidates = new ArrayList<>();
        double width = TextWidth.of(text, 13, false);
        for (double y : heights) {
            for (double x = area.getMaxX() - 4; x - width >= area.getX(); x -= 6) {
                candidates.add(Place.of(x, y, "end", text, 13, false));
            }
        }
        if (!candidates.isEmpty()) {
            twice(places.best(candidates), text, "font-size=\"13\"", "#56606b");
        }
    }

    private void bold(double x, double y, String text) {
        out.append(TrendMarks.text(x, y, text, "class=\"t-b\" font-size=\"13\" font-weight=\"700\" fill=\"#1d2733\"", "start"));
    }

    private void quiet(double x, double y, String text) {
        out.append(TrendMarks.text(x, y, text, "font-size=\"13\" fill=\"#56606b\"", "start"));
    }
}
