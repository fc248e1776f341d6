package org.steadwork.drawing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * One measure over the visits of a case, as a chart needs it. The baseline is the first visit with a score.
 *
 * @param id            distinguishes the charts of one page; letters, digits and hyphens
 * @param measure       name of the measure, e.g. "Neck disability (NDI)"
 * @param unit          stands after a value, e.g. "%"; blank for a plain number
 * @param lowest        least score the instrument can give
 * @param highest       largest score the instrument can give, more than {@code lowest}
 * @param decimals      decimals of a score, in [0, 2]; with 0 a score that is not whole shows one
 * @param visits        in the order of their dates, one a day, at least one
 * @param error         smallest change that is more than measurement error, in the measure's own unit; null when not known
 * @param importance    smallest change that matters to most people, in the measure's own unit; null when not known
 * @param marks         changes of the plan, in any order; kept in the order of their dates
 */
public record Trend(String id, String measure, String unit, double lowest, double highest, boolean lowerIsBetter, int decimals,
        List<Visit> visits, Double error, Double importance, List<PlanMark> marks) {

    /** A visit with its score; a null score was not due, not given or the visit was missed, and is never drawn as a value. */
    public record Visit(LocalDate date, Double score) {
    }

    /** A trend without changes of the plan. */
    public Trend(String id, String measure, String unit, double lowest, double highest, boolean lowerIsBetter, int decimals,
            List<Visit> visits, Double error, Double importance) {
        this(id, measure, unit, lowest, highest, lowerIsBetter, decimals, visits, error, importance, List.of());
    }

    public Trend {
        if (!id.matches("[A-Za-z0-9-]+")) {
            throw new IllegalArgumentException("A chart's id has letters, digits and hyphens only, but was '" + id + "'");
        }
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(unit, "unit");
        if (!(highest > lowest && Double.isFinite(highest - lowest))) {
            throw new IllegalArgumentException("An instrument's highest score is above its lowest, but they were " + highest + " and " + lowest);
        }
        if (decimals < 0 || decimals > 2) {
            throw new IllegalArgumentException("A score is shown with 0 to 2 decimals, not " + decimals);
        }
        visits = List.copyOf(visits);
        marks = marks.stream().sorted(Comparator.comparing(PlanMark::date)).toList();
        if (visits.isEmpty()) {
            throw new IllegalArgumentException("A trend has at least one visit");
        }
        for (int i = 0; i < visits.size(); i++) {
            Double score = visits.get(i).score();
            if (score != null && !(score >= lowest && score <= highest)) {
                throw new IllegalArgumentException(measure + " lies between " + lowest + " and " + highest + ", but was " + score);
            }
            if (i > 0 && !visits.get(i).date().isAfter(visits.get(i - 1).date())) {
                throw new IllegalArgumentException("Visits go forward in time, but " + visits.get(i).date() + " came after " + visits.get(i - 1).date());
            }
        }
        check(error, "error");
        check(importance, "importance");
    }

    private static void check(Double width, String name) {
        if (width != null && !(width > 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException("The " + name + " must be more than 0, but was " + width);
        }
    }

    /** The same trend without its changes of the plan, for readers who may not see them. */
    public Trend withoutMarks() {
        return new Trend(id, measure, unit, lowest, highest, lowerIsBetter, decimals, visits, error, importance);
    }

    /** The visits with a score. */
    public List<Visit> scored() {
        return visits.stream().filter(v -> v.score() != null).toList();
    }

    Double baseline() {
        List<Visit> scored = scored();
        return scored.isEmpty() ? null : scored.get(0).score();
    }

    /** The score from which a change for the better is important, or null when not known or beyond the instrument. */
    Double importantFrom() {
        if (baseline() == null || importance == null) {
            return null;
        }
        double from = lowerIsBetter ? baseline() - importance : baseline() + importance;
        return from >= lowest && from <= highest ? from : null;
    }

    /** The first day on the time axis: the first visit or an earlier change of the plan. */
    LocalDate firstDay() {
        LocalDate visit = visits.get(0).date();
        return marks.isEmpty() || visit.isBefore(marks.get(0).date()) ? visit : marks.get(0).date();
    }

    /** The last day on the time axis: the last visit or a later change of the plan. */
    LocalDate lastDay() {
        LocalDate visit = visits.get(visits.size() - 1).date();
        return marks.isEmpty() || visit.isAfter(marks.get(marks.size() - 1).date()) ? visit : marks.get(marks.size() - 1).date();
    }

    /** Days from the first day on the time axis. */
    long day(LocalDate date) {
        return date.toEpochDay() - firstDay().toEpochDay();
    }

    boolean severalYears() {
        return firstDay().getYear() != lastDay().getYear();
    }
}
