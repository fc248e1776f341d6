package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.TheilSen;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.web.Dates;

/** One measure as a page shows it: the verdict in words first, then the numbers, the drawing and the working. */
public record MeasureView(MeasureCourse course, String chart) {

    public String label() {
        return course.instrument().label();
    }

    /** The id of the part of the page, without signs that an address cannot have. */
    public String id() {
        return course.instrument().key().replace('_', '-');
    }

    /** The signed change since the first score, or a dash. */
    public String by() {
        return course.sinceFirst().map(verdict -> Shown.change(course.instrument(), verdict.change())).orElse("\u2013");
    }

    public String words() {
        if (course.sinceFirst().isPresent()) {
            return ScoreGrids.capital(course.sinceFirst().get().kind().words());
        }
        if (!course.instrument().outcome()) {
            return course.latest().flatMap(point -> course.instrument().band(point.value())).map(band -> ScoreGrids.capital(band.label()))
                    .orElse("Not judged: a rating, not a measure of change");
        }
        return course.points().size() < 2 ? "Only one score so far" : "Not comparable";
    }

    public boolean worse() {
        return course.sinceFirst().filter(verdict -> verdict.kind() == ChangeVerdict.Kind.WORSE).isPresent()
                || course.sinceLast().filter(verdict -> verdict.kind() == ChangeVerdict.Kind.WORSE).isPresent();
    }

    /** Says the judgement as a sentence, for the reader who wants no number. */
    public String meaning() {
        return course.sinceFirst().map(verdict -> switch (verdict.kind()) {
            case WORSE -> "Worse since the start, by more than measurement error.";
            case NO_REAL_CHANGE -> "No change beyond measurement error since the start.";
            case POSSIBLY_IMPORTANT -> "As much as matters to most people, but within measurement error: measure again before building on it.";
            case REAL_NOT_YET_IMPORTANT -> "A real change, not yet one that matters to most people.";
            case IMPORTANT -> "A real change, and one that matters to most people.";
            case REAL_IMPORTANCE_UNKNOWN -> "A real change for the better; how much matters to most people is not known.";
            case BEYOND_IMPORTANCE_ERROR_UNKNOWN -> "As much as matters to most people; measurement error is not known.";
            case NOT_JUDGED -> "";
        }).orElse("");
    }

    /** Says what the published amounts of importance range over, when there is more than one; blank otherwise. */
    public String differing() {
        return course.sinceFirst().isPresent() && course.importanceRange().size() > 1 ? course.range() + "." : "";
    }

    /** One score in the table under the drawing. */
    public record Row(String on, String value, String sinceFirst, String sinceLast) {
    }

    /** The scores, the latest first, with their changes. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        List<MeasureCourse.Point> points = course.points();
        for (int i = points.size() - 1; i >= 0; i--) {
            MeasureCourse.Point point = points.get(i);
            rows.add(new Row(Dates.shown(point.on()), Shown.value(course.instrument(), point.value()) + (point.estimated() ? " est." : ""),
                    i == 0 ? "start" : Shown.change(course.instrument(), point.value() - points.get(0).value()),
                    i == 0 ? "\u2013" : Shown.change(course.instrument(), point.value() - points.get(i - 1).value())));
        }
        return rows;
    }

    /** Says when measuring again could tell anything; blank when it cannot be said. */
    public String remeasure() {
        return MeasureAgain.words(course);
    }

    /** Every published amount of change with its source and how sure the figure is, errors first. */
    public List<String> amounts() {
        double baseline = course.points().get(0).value();
        List<String> amounts = new ArrayList<>();
        for (Threshold.Kind kind : Threshold.Kind.values()) {
            course.instrument().range(kind, course.region(), baseline).forEach(amount -> amounts.add((kind == Threshold.Kind.ERROR ? "Error " : "Importance ")
                    + described(amount)));
        }
        return amounts;
    }

    public String basis() {
        return course.instrument().outcome() ? course.basis() : "A change on this is not judged.";
    }

    public String now() {
        return course.latest().map(point -> Shown.value(course.instrument(), point.value())).orElse("not entered");
    }

    public String was() {
        return course.points().size() < 2 ? "" : "was " + Shown.value(course.instrument(), course.points().get(0).value());
    }

    /** The change since the time before, in words with its number. */
    public String sinceLast() {
        return course.sinceLast().map(verdict -> Shown.change(course.instrument(), verdict.change()) + " since last time: " + verdict.kind().words())
                .orElse("");
    }

    public String inputs() {
        List<String> inputs = new ArrayList<>();
        course.points().forEach(point -> inputs.add(Dates.shown(point.on()) + ": " + Shown.value(course.instrument(), point.value())
                + (point.estimated() ? " (missing items filled in by the rule)" : "")));
        return String.join("; ", inputs);
    }

    public String rule() {
        return ScoreGrids.capital(course.instrument().rule().words()) + ". Change against error first, then importance.";
    }

    public String slope() {
        return course.trend().map(trend -> Shown.change(course.instrument(), trend.slope()) + " a week, median of the slopes of all pairs; "
                + trend.points() + " points" + (trend.points() < TheilSen.FEWEST_FOR_SIGNIFICANCE ? ", too few to call a trend significant" : ""))
                .orElse("no line under three scores");
    }

    public String scoringSource() {
        return course.instrument().source();
    }

    private static String sure(Threshold threshold) {
        return switch (threshold.tag()) {
            case "S" -> "seen in the source";
            case "C" -> "computed from published figures";
            case "P" -> "a rule of ours";
            default -> "from memory";
        };
    }

    private static String described(Threshold threshold) {
        String amount = Shown.amount(threshold.value()) + (threshold.unit() == Threshold.Unit.POINTS ? "" : "\u00a0% of the baseline");
        return amount + " (" + threshold.level() + (threshold.population().isBlank() ? "" : ", " + threshold.population()) + "): " + threshold.source()
                + " [" + sure(threshold) + "]" + (threshold.leads() ? ", leads" : "");
    }
}
