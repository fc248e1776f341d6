package org.steadwork.outcome.scoring;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that can be said about the change in a series of scores, in the order in which it is to be read: worsening, error, importance,
 * then the rest.
 *
 * @param sinceFirst the latest score against the first; {@code sinceLast} against the one before
 * @param errors published amounts of error in the region, smallest first; the leading one made the judgement
 * @param importances published amounts of importance likewise; {@code reached} how many of them the improvement since the first reaches
 * @param reliableChange the index of reliable change since the first, by the error of the leading amount; empty where that does not
 *        say how it was made. Beyond ±1.96 it is unlikely to be error
 * @param trend from three scores on
 * @param plateau whether the course has come to a standstill
 * @param remeasureFrom first day on which measuring again could tell anything; empty when error or pace is not known
 */
public record ChangeReading(Series series, String region, ChangeVerdict sinceFirst, ChangeVerdict sinceLast, List<Threshold> errors,
        List<Threshold> importances, int reached, OptionalDouble reliableChange, PercentChange percent, Optional<TheilSen> trend,
        Plateau plateau, Optional<LocalDate> remeasureFrom) {

    /** What is known beside the scores. {@code expectedPointsAWeek} is the pace the clinician expects; empty takes that of the trend. */
    public record Beside(double weeksToNextReview, boolean goalsMet, OptionalDouble expectedPointsAWeek) {
        public Beside {
            if (!(weeksToNextReview > 0 && weeksToNextReview <= 104)) {
                throw new IllegalArgumentException("The next review is above 0 and up to 104 weeks away, but is " + weeksToNextReview);
            }
        }
    }

    /** Reads a series of at least two scores of an outcome measure; a screen or a survey is refused. */
    public static ChangeReading of(Series series, String region, Beside beside) {
        int n = series.points().size();
        if (n < 2) {
            throw new IllegalArgumentException("A change needs at least two scores, but there " + (n == 1 ? "is one" : "are none"));
        }
        Instrument instrument = series.instrument();
        if (!instrument.outcome()) {
            throw new IllegalArgumentException(instrument.name() + " is no outcome measure: change on it is not judged");
        }
        double first = series.first().value();
        double latest = series.latest().value();
        Thresholds.Counting errors = instrument.amounts().counting(Threshold.Kind.ERROR, region, first);
        Thresholds.Counting importances = instrument.amounts().counting(Threshold.Kind.IMPORTANCE, region, first);
        ChangeVerdict sinceFirst = ChangeVerdict.of(errors, importances, instrument.direction(), first, latest).with(ScaleEnds.caution(instrument, first));
        ChangeVerdict sinceLast = n == 2 ? sinceFirst : ChangeVerdict.of(instrument, region, series.points().get(n - 2).value(), latest);
        Optional<TheilSen> trend = n < TheilSen.FEWEST_POINTS ? Optional.empty() : Optional.of(TheilSen.of(series.weeks(), series.values()));
        OptionalDouble reliable = errors.leading().flatMap(ReliableChange::behind)
                .map(change -> OptionalDouble.of(change.index(first, latest))).orElse(OptionalDouble.empty());
        return new ChangeReading(series, region, sinceFirst, sinceLast, errors.range(), importances.range(),
                sinceFirst.reached(importances.range()), reliable, PercentChange.of(instrument, first, latest), trend,
                Plateau.of(series, errors, importances, beside.weeksToNextReview(), beside.goalsMet()),
                remeasure(series.latest().on(), instrument.error(region, latest), latest, pace(beside, trend)));
    }

    /** True when the course is worse since the first or since the last score: shown before everything else. */
    public boolean worse() {
        return sinceFirst.kind() == ChangeVerdict.Kind.WORSE || sinceLast.kind() == ChangeVerdict.Kind.WORSE;
    }

    private static OptionalDouble pace(Beside beside, Optional<TheilSen> trend) {
        return beside.expectedPointsAWeek().isPresent() || trend.isEmpty() ? beside.expectedPointsAWeek()
                : OptionalDouble.of(trend.get().slope());
    }

    private static Optional<LocalDate> remeasure(LocalDate last, Optional<Threshold> error, double latest, OptionalDouble pace) {
        if (pace.isEmpty()) {
            return Optional.empty();
        }
        return error.filter(threshold -> threshold.points(latest) > 0)
                .flatMap(threshold -> Remeasure.from(last, threshold.points(latest), pace.getAsDouble()));
    }
}
