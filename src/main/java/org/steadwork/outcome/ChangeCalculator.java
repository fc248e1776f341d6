package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.body.BodyRegion;
import org.steadwork.outcome.scoring.ChangeReading;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.RatingAgreement;
import org.steadwork.outcome.scoring.Series;

/** What a course of scores says about change, on the Bench. */
@ApplicationScoped
class ChangeCalculator implements Calculator {

    private static final int MOST_SCORES = 60;
    private static final int DECIMALS = 6;
    private static final int MOST_POINTS = 100;
    private static final int EARLIEST_YEAR = 1900;
    private static final int LATEST_YEAR = 2200;

    @Inject
    Instruments instruments;

    @Override
    public String key() {
        return "change";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Change: real, and does it matter?";
    }

    @Override
    public String question() {
        return "Is the change in a course of scores more than measurement error, and as large as matters to most people?";
    }

    @Override
    public List<String> limits() {
        return List.of("Amounts of change come from groups of patients; for one person they are a guide, not a verdict.",
                "Part of an early improvement would have come by itself: people seek care when they are at their worst.",
                "Under five scores no trend can be called significant.");
    }

    @Override
    public List<Input> inputs() {
        List<Choice> measures = instruments.all().stream().filter(Instrument::outcome).map(one -> new Choice(one.key(), one.label())).toList();
        List<Choice> regions = Arrays.stream(BodyRegion.values()).map(region -> new Choice(region.key(), region.label())).toList();
        List<Choice> ratings = instruments.all().stream().filter(one -> one.changeRating().isPresent()).map(one -> new Choice(one.key(), one.label())).toList();
        return List.of(Input.choice("instrument", "Measure", measures).example("odi21a"),
                Input.choice("region", "Body region", regions).hint("Amounts published for the region come before general ones.").optional().example("low_back"),
                Input.rows("scores", "Scores of one version of the form", 2, MOST_SCORES, List.of(Input.date("on", "Day"),
                        Input.number("score", "Score", "", -MOST_POINTS, MOST_POINTS, DECIMALS))).hint("The earliest first, one a day.")
                        .example(List.of(Map.of("on", "2030-09-02", "score", 62), Map.of("on", "2030-09-16", "score", 50),
                                Map.of("on", "2030-09-30", "score", 40), Map.of("on", "2030-10-14", "score", 38))),
                Input.number("weeks_to_next_review", "Weeks to the next review", "weeks", 0.5, 52, 1).startsAt(2),
                Input.yesNo("goals_met", "The person's goals are met").startsAt(false),
                Input.number("expected_a_week", "Change you expect in a week", "points", 0.01, MOST_POINTS, 2)
                        .hint("Left out, the pace of the scores themselves is taken, from three on.").optional(),
                Input.choice("rating_scale", "Scale of the person's own rating of change", ratings).optional().example("groc15"),
                Input.whole("rating", "The person's own rating of change", "", -7, 7).hint("Since the first score.").optional().example(5));
    }

    @Override
    public String standing() {
        return "The order (error first, importance second) is published; the standstill, the prompt on the person's rating and the day for measuring "
                + "again are rules of ours. Slopes were checked against SciPy and R. Amounts from memory are marked and never alert alone.";
    }

    @Override
    public List<String> sources() {
        return List.of("Wright et al., J Man Manip Ther 2012;20:160 (importance varies with anchor, baseline and time)",
                "Young BA et al., Spine J 2009;9:802 (the larger of error and importance for one person)", "Jacobson and Truax, J Consult Clin Psychol 1991;59:12",
                "Dworkin et al., J Pain 2008;9:105 (percent change)", "Theil 1950; Sen 1968 (slope)", "Each amount: see the instrument's own sources");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        Instrument instrument = instruments.find(given.choice("instrument")).orElseThrow();
        ChangeReading reading = ChangeReading.of(series(given, instrument), given.has("region") ? given.choice("region") : "",
                new ChangeReading.Beside(given.number("weeks_to_next_review"), given.yes("goals_met"),
                        given.has("expected_a_week") ? OptionalDouble.of(given.number("expected_a_week")) : OptionalDouble.empty()));
        return ChangeAnswer.of(reading, agreement(given, reading));
    }

    private static Series series(Inputs given, Instrument instrument) {
        List<Series.Point> points = new ArrayList<>();
        LocalDate before = LocalDate.MIN;
        for (Inputs row : given.rows("scores")) {
            LocalDate on = row.date("on");
            double score = row.number("score");
            if (on.getYear() < EARLIEST_YEAR || on.getYear() > LATEST_YEAR) {
                throw CalculatorRefusal.at(row.path("on"), "The day of a score lies between " + EARLIEST_YEAR + " and " + LATEST_YEAR + ".", on,
                        "a day from " + EARLIEST_YEAR + " to " + LATEST_YEAR);
            }
            if (!on.isAfter(before)) {
                throw CalculatorRefusal.at(row.path("on"), "Scores stand in the order of their days, one a day: this one is later than " + before + ".",
                        on, "a day after " + before);
            }
            if (score < instrument.lowest() || score > instrument.highest()) {
                String range = "from " + Shown.amount(instrument.lowest()) + " to " + Shown.amount(instrument.highest());
                throw CalculatorRefusal.at(row.path("score"), instrument.label() + " goes " + range + ". You entered " + Shown.amount(score) + ".",
                        Shown.amount(score), "a number " + range);
            }
            points.add(new Series.Point(on, score, instrument.version(), instrument.unit(), false));
            before = on;
        }
        return new Series(instrument, points);
    }

    private RatingAgreement agreement(Inputs given, ChangeReading reading) {
        if (!given.has("rating") && !given.has("rating_scale")) {
            return null;
        }
        if (!given.has("rating") || !given.has("rating_scale")) {
            String missing = given.has("rating") ? "rating_scale" : "rating";
            throw CalculatorRefusal.at(given.path(missing), "A rating and its scale belong together.", null, "both, or neither");
        }
        Instrument scale = instruments.find(given.choice("rating_scale")).orElseThrow();
        int rating = given.whole("rating");
        if (rating < scale.lowest() || rating > scale.highest()) {
            String range = String.format(Locale.ROOT, "a whole number from %s to %s", Shown.amount(scale.lowest()), Shown.amount(scale.highest()));
            throw CalculatorRefusal.at(given.path("rating"), scale.label() + " is " + range + ". You entered " + Shown.amount(rating) + ".",
                    Shown.amount(rating), range);
        }
        return RatingAgreement.of(reading.sinceFirst(), scale, rating);
    }
}
