package org.steadwork.outcome;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.outcome.scoring.ChangeReading;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.PercentChange;
import org.steadwork.outcome.scoring.RatingAgreement;
import org.steadwork.outcome.scoring.TheilSen;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.web.Dates;

/** Writes the reading of a course of scores as an answer of the Bench: words first, worsening before everything else. */
final class ChangeAnswer {

    private final ChangeReading reading;
    private final Instrument instrument;
    private final BenchAnswer answer;

    private ChangeAnswer(ChangeReading reading) {
        this.reading = reading;
        this.instrument = reading.series().instrument();
        boolean worseLast = reading.sinceLast().kind() == ChangeVerdict.Kind.WORSE;
        this.answer = BenchAnswer.of(worseLast && reading.sinceFirst().kind() != ChangeVerdict.Kind.WORSE
                ? "Worse since the last score; since the first: " + reading.sinceFirst().kind().words()
                : ScoreGrids.capital(reading.sinceFirst().kind().words())).marked(mark(reading));
    }

    /** @param agreement the person's own rating beside it, or null */
    static BenchAnswer of(ChangeReading reading, RatingAgreement agreement) {
        ChangeAnswer made = new ChangeAnswer(reading);
        made.change();
        made.amounts();
        made.trend();
        made.beside(agreement);
        return made.answer;
    }

    private void change() {
        ChangeVerdict first = reading.sinceFirst();
        answer.headline("Change since the first score", Shown.change(instrument, first.change()), instrument.unit())
                .headline("Change since the last score", Shown.change(instrument, reading.sinceLast().change()), instrument.unit());
        answer.step("Change", "latest − first", Shown.number(instrument, first.later()) + " − " + Shown.number(instrument, first.earlier()) + " = "
                + Shown.change(instrument, first.change()), instrument.unit());
        answer.result("change", first.change()).result("improvement", first.improvement()).result("since_first", word(first.kind()))
                .result("since_last", word(reading.sinceLast().kind())).result("change_since_last", reading.sinceLast().change())
                .result("worse", reading.worse()).result("alerts", first.alerts() || reading.sinceLast().alerts());
        if (!first.caution().isEmpty()) {
            answer.note(first.caution());
        }
    }

    private void amounts() {
        ChangeVerdict first = reading.sinceFirst();
        answer.step("Measurement error", "a change of this size or more is more than error", first.error().isPresent()
                ? Shown.amount(first.error().getAsDouble()) : "not known", instrument.unit());
        answer.step("Importance", "an improvement of this size or more matters to most people", first.importance().isPresent()
                ? Shown.amount(first.importance().getAsDouble()) : "not known", instrument.unit());
        reading.errors().forEach(this::step);
        reading.importances().forEach(this::step);
        answer.result("error", ScoreCalculator.number(first.error())).result("importance", ScoreCalculator.number(first.importance()))
                .result("errors", reading.errors().stream().map(this::amount).toList())
                .result("importances", reading.importances().stream().map(this::amount).toList()).result("importances_reached", reading.reached())
                .result("reliable_change", ScoreCalculator.number(reading.reliableChange()));
        if (!reading.importances().isEmpty()) {
            answer.note("The improvement reaches " + reading.reached() + " of " + reading.importances().size() + " published amounts of importance.");
        }
        reading.reliableChange().ifPresent(index -> answer.step("Reliable change index", "change ÷ error of a difference; beyond ±1.96 unlikely to be error",
                Shown.amount(index), ""));
        PercentChange percent = reading.percent();
        percent.value().ifPresent(value -> answer.step("Percent change", "improvement ÷ first score × 100", Shown.amount(value), "%"));
        answer.result("percent", ScoreCalculator.number(percent.value())).result("percent_unstable", percent.unstable());
        if (!percent.caution().isEmpty() && !percent.caution().equals(reading.sinceFirst().caution())) {
            answer.note(percent.caution());
        }
    }

    private void trend() {
        reading.trend().ifPresent(trend -> answer.step("Trend", "median of the slopes of all pairs of scores, from " + trend.points() + " scores"
                + (trend.points() < TheilSen.FEWEST_FOR_SIGNIFICANCE ? ", too few to call it significant" : ""), Shown.amount(trend.slope()), "a week"));
        answer.result("slope_a_week", reading.trend().map(TheilSen::slope).orElse(null))
                .result("standstill", reading.plateau().reached()).result("standstill_alerts", reading.plateau().alerts());
        if (reading.plateau().reached()) {
            answer.note("The course has come to a standstill. That is a reason to think, and never one to close a case.");
        }
        answer.result("measure_again_from", reading.remeasureFrom().map(Object::toString).orElse(null));
        reading.remeasureFrom().ifPresent(day -> answer.note("Measuring again before " + Dates.shown(day)
                + " can tell nothing: at this pace the change would still lie within the error."));
    }

    private void beside(RatingAgreement agreement) {
        if (agreement == null) {
            return;
        }
        answer.result("rating_says", word(agreement.person())).result("rating_disagrees", agreement.disagrees());
        if (agreement.disagrees()) {
            answer.note(agreement.prompt());
        }
    }

    private void step(Threshold threshold) {
        answer.step(threshold.level() + (threshold.leads() ? ", used here" : ""), described(threshold),
                Shown.amount(threshold.points(reading.sinceFirst().earlier())), instrument.unit());
    }

    private String described(Threshold threshold) {
        String counted = threshold.unit() == Threshold.Unit.PERCENT_OF_BASELINE ? Shown.amount(threshold.value()) + " % of the first score; " : "";
        String from = threshold.population().isBlank() ? "" : threshold.population() + "; ";
        return counted + from + threshold.source() + (threshold.fromMemory() ? ", from memory" : "");
    }

    private Map<String, Object> amount(Threshold threshold) {
        Map<String, Object> amount = new LinkedHashMap<>();
        amount.put("points", threshold.points(reading.sinceFirst().earlier()));
        amount.put("level", threshold.level());
        amount.put("used", threshold.leads());
        amount.put("population", threshold.population());
        amount.put("source", threshold.source());
        amount.put("tag", threshold.tag());
        return amount;
    }

    private static BenchAnswer.Mark mark(ChangeReading reading) {
        if (reading.worse()) {
            return BenchAnswer.Mark.OUT;
        }
        return List.of(ChangeVerdict.Kind.IMPORTANT, ChangeVerdict.Kind.REAL_NOT_YET_IMPORTANT, ChangeVerdict.Kind.REAL_IMPORTANCE_UNKNOWN)
                .contains(reading.sinceFirst().kind()) ? BenchAnswer.Mark.IN : BenchAnswer.Mark.NONE;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
