package org.steadwork.outcome;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Plateau;
import org.steadwork.outcome.scoring.TheilSen;
import org.steadwork.outcome.scoring.Threshold;

/**
 * One measure of one case over time: its scores, and what the change since the first and since the last time is.
 *
 * @param region key of the body region whose thresholds judge it, blank for the general ones
 * @param points the scores with a value, the earliest first, one a day, all of one version of the form
 * @param sinceFirst the judgement on the latest against the first; empty under two comparable scores, and for a screen
 * @param sinceLast the judgement on the latest against the one before
 * @param comparison what was compared when that is not simply the scores; may be blank
 */
public record MeasureCourse(Instrument instrument, String region, List<Point> points, Optional<ChangeVerdict> sinceFirst,
        Optional<ChangeVerdict> sinceLast, String comparison) {

    private static final double DAYS_A_WEEK = 7;

    /** One score. {@code estimated} when the rule filled in missing items. */
    public record Point(LocalDate on, double value, boolean estimated) {
    }

    public MeasureCourse {
        points = List.copyOf(points);
    }

    public Optional<Point> first() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(0));
    }

    public Optional<Point> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
    }

    public Optional<Point> on(LocalDate day) {
        return points.stream().filter(point -> point.on().equals(day)).findFirst();
    }

    /** True when the measure should have been taken by a day: never taken, or its interval is over; once-only measures are due once. */
    public boolean due(LocalDate day) {
        List<Point> before = points.stream().filter(point -> point.on().isBefore(day)).toList();
        if (before.isEmpty()) {
            return true;
        }
        LocalDate last = before.get(before.size() - 1).on();
        return instrument.everyDays() > 0 && !last.plusDays(instrument.everyDays()).isAfter(day);
    }

    /** Returns the trend in points a week, from three scores on. */
    public Optional<TheilSen> trend() {
        return points.size() < TheilSen.FEWEST_POINTS ? Optional.empty() : Optional.of(TheilSen.of(weeks(), values()));
    }

    /** True when the scores have come to a standstill by the rule of {@link Plateau}. */
    public boolean plateau(double weeksToNextReview, boolean goalsMet) {
        if (points.size() < TheilSen.FEWEST_POINTS || !instrument.outcome()) {
            return false;
        }
        double first = points.get(0).value();
        return Plateau.reached(weeks(), values(), instrument.direction(), amount(instrument.error(region, first), first),
                amount(instrument.importance(region, first), first), weeksToNextReview, goalsMet);
    }

    public Optional<Threshold> error() {
        return first().flatMap(point -> instrument.error(region, point.value()));
    }

    public Optional<Threshold> importance() {
        return first().flatMap(point -> instrument.importance(region, point.value()));
    }

    /** Says what the judgement rests on: from where to where, since when, and both amounts. */
    public String basis() {
        if (sinceFirst.isEmpty()) {
            return points.size() < 2 ? "A change shows from the second score on." : "No two scores can be compared.";
        }
        ChangeVerdict verdict = sinceFirst.get();
        List<String> sentences = new ArrayList<>();
        sentences.add(Shown.value(instrument, verdict.earlier()) + " to " + Shown.value(instrument, verdict.later()) + " in "
                + span(ChronoUnit.DAYS.between(points.get(0).on(), latest().orElseThrow().on())) + ".");
        String better = instrument.direction() == org.steadwork.outcome.scoring.Direction.LOWER_BETTER ? "fall" : "rise";
        sentences.add(verdict.error().isPresent() ? "A change of " + Shown.amount(verdict.error().getAsDouble())
                + " or more is more than measurement error;" : "Measurement error is not known;");
        sentences.add(verdict.importance().isPresent() ? "a " + better + " of " + Shown.amount(verdict.importance().getAsDouble())
                + " or more matters to most people." : "what matters to most people is not known.");
        if (!comparison.isBlank()) {
            sentences.add(comparison);
        }
        if (!verdict.caution().isBlank()) {
            sentences.add(verdict.caution());
        }
        return String.join(" ", sentences);
    }

    /** Returns the published amounts of importance for the region at the first score, smallest first; empty without a comparison. */
    public List<Threshold> importanceRange() {
        return sinceFirst.map(verdict -> instrument.range(Threshold.Kind.IMPORTANCE, region, verdict.earlier())).orElse(List.of());
    }

    /** Says how many of the published amounts of importance are reached: a range, not one number. */
    public String range() {
        if (sinceFirst.isEmpty()) {
            return "";
        }
        List<Threshold> range = importanceRange();
        if (range.isEmpty()) {
            return "No published amount of importance found";
        }
        double baseline = sinceFirst.get().earlier();
        String amounts = Shown.amount(range.get(0).points(baseline)) + " to " + Shown.amount(range.get(range.size() - 1).points(baseline));
        return range.size() == 1 ? "One published amount, " + Shown.amount(range.get(0).points(baseline))
                : range.size() + " published amounts from " + amounts + "; this improvement reaches " + sinceFirst.get().reached(range);
    }

    private static String span(long days) {
        return days < 14 ? days + (days == 1 ? " day" : " days") : days / 7 + " weeks";
    }

    private static java.util.OptionalDouble amount(Optional<Threshold> threshold, double baseline) {
        return threshold.isEmpty() ? java.util.OptionalDouble.empty() : java.util.OptionalDouble.of(threshold.get().points(baseline));
    }

    private double[] weeks() {
        LocalDate start = points.get(0).on();
        return points.stream().mapToDouble(point -> ChronoUnit.DAYS.between(start, point.on()) / DAYS_A_WEEK).toArray();
    }

    private double[] values() {
        return points.stream().mapToDouble(Point::value).toArray();
    }
}
