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

    public String sources() {
        List<String> sources = new ArrayList<>();
        course.error().ifPresent(error -> sources.add("Error " + described(error)));
        course.importance().ifPresent(importance -> sources.add("importance " + described(importance)));
        sources.add("scoring " + course.instrument().source());
        return String.join("; ", sources);
    }

    private static String described(Threshold threshold) {
        String amount = Shown.amount(threshold.value()) + (threshold.unit() == Threshold.Unit.POINTS ? "" : "\u00a0% of the baseline");
        return amount + " (" + threshold.level() + (threshold.population().isBlank() ? "" : ", " + threshold.population()) + "): " + threshold.source()
                + ("M".equals(threshold.tag()) ? ", from memory" : "");
    }
}
