package org.steadwork.outcome.scoring;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The scores of one person on one version of one instrument, the earliest first. Scores of two versions, or in two units, never make
 * one series and are refused.
 */
public record Series(Instrument instrument, List<Point> points) {

    private static final double DAYS_A_WEEK = 7;

    /**
     * One score as it is stored.
     *
     * @param value within the scale of the instrument, full precision
     * @param version of the form; {@code unit} in which the value is stored, blank for points
     * @param estimated true when missing items were filled in
     */
    public record Point(LocalDate on, double value, String version, String unit, boolean estimated) {
    }

    public Series {
        points = List.copyOf(points);
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            if (!point.version().equals(points.get(0).version())) {
                throw new IllegalArgumentException("Scores of the versions " + points.get(0).version() + " and " + point.version()
                        + " never make one series");
            }
            if (!point.unit().equals(instrument.unit())) {
                throw new IllegalArgumentException("A score of " + instrument.name() + " is stored in \"" + instrument.unit() + "\", not in \""
                        + point.unit() + "\"");
            }
            if (!(point.value() >= instrument.lowest() && point.value() <= instrument.highest())) {
                throw new IllegalArgumentException(instrument.name() + " goes from " + Plain.number(instrument.lowest()) + " to "
                        + Plain.number(instrument.highest()) + ", but a score is " + point.value());
            }
            if (i > 0 && !point.on().isAfter(points.get(i - 1).on())) {
                throw new IllegalArgumentException("Scores stand in the order of their days, one a day");
            }
        }
    }

    /** Parts scores into the series they make, by version, in the order in which each version first came. */
    public static Map<String, Series> byVersion(Instrument instrument, List<Point> scores) {
        Map<String, Map<LocalDate, Point>> parted = new LinkedHashMap<>();
        scores.forEach(score -> parted.computeIfAbsent(score.version(), version -> new TreeMap<>()).put(score.on(), score));
        Map<String, Series> series = new LinkedHashMap<>();
        parted.forEach((version, days) -> series.put(version, new Series(instrument, List.copyOf(days.values()))));
        return series;
    }

    public Point first() {
        return points.get(0);
    }

    public Point latest() {
        return points.get(points.size() - 1);
    }

    /** Returns the times in weeks since the first score. */
    double[] weeks() {
        return points.stream().mapToDouble(point -> ChronoUnit.DAYS.between(first().on(), point.on()) / DAYS_A_WEEK).toArray();
    }

    double[] values() {
        return points.stream().mapToDouble(Point::value).toArray();
    }
}
