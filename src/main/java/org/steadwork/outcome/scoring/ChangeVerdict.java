package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The judgement on the change between two scores of one person: measurement error first, then importance.
 *
 * @param change later − earlier, in the unit of the scale
 * @param improvement the same, signed so that positive is better
 * @param error the amount of change that is more than measurement error; empty when none is known
 * @param importance the amount of improvement that matters; empty when none is known
 * @param caution what limits the judgement, in words; blank when nothing does
 * @param alerts true for a worsening that may raise an alert: one that reaches at least one amount which is not from memory
 */
public record ChangeVerdict(Kind kind, double earlier, double later, double change, double improvement, OptionalDouble error,
        OptionalDouble importance, String caution, boolean alerts) {

    /** Tolerance, in points, for amounts that equal a threshold but for the rounding of binary fractions. */
    static final double ROUNDING = 1e-9;

    /** The possible judgements, the one to look at first standing first. */
    public enum Kind {
        WORSE("worse"),
        NO_REAL_CHANGE("no real change"),
        POSSIBLY_IMPORTANT("possibly important, not distinguishable from error"),
        REAL_NOT_YET_IMPORTANT("real change, not yet important"),
        IMPORTANT("important change, better"),
        /** One of the two amounts is not known for this instrument, so the question it answers stays open. */
        REAL_IMPORTANCE_UNKNOWN("real change, better; importance not known"),
        BEYOND_IMPORTANCE_ERROR_UNKNOWN("as large as matters to most; measurement error not known"),
        NOT_JUDGED("not judged: no threshold known");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Judges a change. A worsening of at least the error is "worse" and comes before everything else; below the error nothing
     * is real, though an improvement that reaches importance is named as possibly important; from the error on, importance decides.
     * When importance is the smaller amount, the larger (the error) governs, as for one person it must.
     *
     * @param error amount above 0 in points, or empty; importance likewise
     * Source: Wright et al. 2012; Young et al. 2009 (the larger of both for one person); Stratford and others on measurement error.
     */
    public static ChangeVerdict of(double earlier, double later, Direction direction, OptionalDouble error, OptionalDouble importance) {
        if (!Double.isFinite(earlier) || !Double.isFinite(later)) {
            throw new IllegalArgumentException("A change needs two scores, but these are " + earlier + " and " + later);
        }
        double improvement = direction.improvement(earlier, later);
        Kind kind = kind(improvement, error, importance);
        return new ChangeVerdict(kind, earlier, later, later - earlier, improvement, error, importance, "", kind == Kind.WORSE);
    }

    /**
     * Judges a change by published amounts: the leading one of each kind in a region. A worsening alerts only when it also reaches
     * an amount that is not from memory, whether of error or of importance.
     */
    public static ChangeVerdict of(Thresholds thresholds, Direction direction, String region, double earlier, double later) {
        return of(thresholds.counting(Threshold.Kind.ERROR, region, earlier), thresholds.counting(Threshold.Kind.IMPORTANCE, region, earlier), direction,
                earlier, later);
    }

    /** Judges a change by the amounts that count at the earlier score. */
    static ChangeVerdict of(Thresholds.Counting errors, Thresholds.Counting importances, Direction direction, double earlier, double later) {
        ChangeVerdict verdict = of(earlier, later, direction, points(errors.leading(), earlier), points(importances.leading(), earlier));
        boolean alerts = verdict.alerts && Stream.concat(errors.range().stream(), importances.range().stream())
                .anyMatch(threshold -> !threshold.fromMemory() && atLeast(-verdict.improvement, threshold.points(earlier)));
        return new ChangeVerdict(verdict.kind, earlier, later, verdict.change, verdict.improvement, verdict.error, verdict.importance, "", alerts);
    }

    /** Judges a change on an instrument with the thresholds of a body region; a risk screen is refused. */
    public static ChangeVerdict of(Instrument instrument, String region, double earlier, double later) {
        if (!instrument.outcome()) {
            throw new IllegalArgumentException(instrument.name() + " is no outcome measure: change on it is not judged");
        }
        return of(instrument.amounts(), instrument.direction(), region, earlier, later).with(ScaleEnds.caution(instrument, earlier));
    }

    /** Says how many of the published amounts of importance the improvement reaches: a range, not one number. */
    public int reached(List<Threshold> range) {
        return (int) range.stream().filter(threshold -> atLeast(improvement, threshold.points(earlier))).count();
    }

    private static Kind kind(double improvement, OptionalDouble error, OptionalDouble importance) {
        boolean important = importance.isPresent() && atLeast(improvement, importance.getAsDouble());
        if (error.isEmpty()) {
            if (importance.isEmpty()) {
                return Kind.NOT_JUDGED;
            }
            // without the error, a worsening as large as importance is taken for worse: caution first
            return atLeast(-improvement, importance.getAsDouble()) ? Kind.WORSE
                    : important ? Kind.BEYOND_IMPORTANCE_ERROR_UNKNOWN : Kind.NO_REAL_CHANGE;
        }
        if (atLeast(-improvement, error.getAsDouble())) {
            return Kind.WORSE;
        }
        if (!atLeast(improvement, error.getAsDouble())) {
            return important ? Kind.POSSIBLY_IMPORTANT : Kind.NO_REAL_CHANGE;
        }
        if (importance.isEmpty()) {
            return Kind.REAL_IMPORTANCE_UNKNOWN;
        }
        return important ? Kind.IMPORTANT : Kind.REAL_NOT_YET_IMPORTANT;
    }

    private static boolean atLeast(double amount, double threshold) {
        return amount >= threshold - ROUNDING;
    }

    private static OptionalDouble points(Optional<Threshold> threshold, double baseline) {
        return threshold.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(threshold.get().points(baseline));
    }

    ChangeVerdict with(String words) {
        return new ChangeVerdict(kind, earlier, later, change, improvement, error, importance, words, alerts);
    }
}
