package org.steadwork.caseload;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.PercentChange;
import org.steadwork.outcome.scoring.Threshold;

/**
 * Judges the change of many cases as the page Outcomes judges that of one. What is published for a measure, region and first score is
 * looked up once. Not safe for several threads.
 */
final class ChangeJudge {

    private static final String WORST_PAIN = "nprs_worst";

    private record From(String instrument, String region, double baseline) {
    }

    private record Amounts(OptionalDouble error, OptionalDouble importance) {
    }

    private final Instruments instruments;
    private final Map<From, Amounts> known = new HashMap<>();

    ChangeJudge(Instruments instruments) {
        this.instruments = instruments;
    }

    /** Returns the judgement on worst pain; null without a pair. */
    ChangeVerdict.Kind pain(CaseOutcome row) {
        return row.painPair() ? judged(WORST_PAIN, row.region() == null ? "" : row.region().key(), row.painFirst(), row.painLast()) : null;
    }

    /** Returns the judgement on the measure of the region; null without a pair, or for a measure that the content no longer has. */
    ChangeVerdict.Kind measure(CaseOutcome row) {
        return row.measurePair() ? judged(row.measure(), row.measureRegion(), row.measureFirst(), row.measureLast()) : null;
    }

    /** Returns the judgement on the measure or, where there is none or it is open, on worst pain. */
    static ChangeVerdict.Kind either(ChangeVerdict.Kind measure, ChangeVerdict.Kind pain) {
        return measure != null && !open(measure) ? measure : pain;
    }

    static boolean painResponder(CaseOutcome row) {
        return PercentChange.responder(row.painFirst(), row.painLast());
    }

    /** True when the published amounts leave the question open. */
    static boolean open(ChangeVerdict.Kind kind) {
        return kind == ChangeVerdict.Kind.NOT_JUDGED;
    }

    static boolean beyondError(ChangeVerdict.Kind kind) {
        return kind == ChangeVerdict.Kind.IMPORTANT || kind == ChangeVerdict.Kind.REAL_NOT_YET_IMPORTANT || kind == ChangeVerdict.Kind.REAL_IMPORTANCE_UNKNOWN;
    }

    private ChangeVerdict.Kind judged(String key, String region, double first, double last) {
        Optional<Instrument> instrument = instruments.find(key);
        if (instrument.isEmpty()) {
            return null;
        }
        Amounts amounts = known.computeIfAbsent(new From(key, region, first), from -> new Amounts(points(instrument.get().error(region, first), first),
                points(instrument.get().importance(region, first), first)));
        return ChangeVerdict.of(first, last, instrument.get().direction(), amounts.error(), amounts.importance()).kind();
    }

    private static OptionalDouble points(Optional<Threshold> threshold, double baseline) {
        return threshold.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(threshold.get().points(baseline));
    }
}
