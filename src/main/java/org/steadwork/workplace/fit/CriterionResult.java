package org.steadwork.workplace.fit;

/**
 * What was found for one criterion.
 *
 * @param value what was measured or worked out, in the criterion's unit; NaN when observed or not looked at
 * @param deviation signed distance from the aim; NaN likewise
 * @param giveOrTake half the 95 % interval of the value; 0 when observed
 * @param bands the bands it was judged on; null when observed
 * @param open whether the verdict differs somewhere within give or take
 */
public record CriterionResult(Criterion criterion, How how, double value, double deviation, double giveOrTake, Criterion.Bands bands,
        Verdict verdict, boolean open) {

    static CriterionResult notLookedAt(Criterion criterion, Criterion.Bands bands) {
        return new CriterionResult(criterion, How.NOT_LOOKED_AT, Double.NaN, Double.NaN, 0, bands, Verdict.NOT_LOOKED_AT, false);
    }

    static CriterionResult observed(Criterion criterion, Grade grade) {
        How how = grade.verdict() == Verdict.NOT_LOOKED_AT ? How.NOT_LOOKED_AT : How.OBSERVED;
        return new CriterionResult(criterion, how, Double.NaN, Double.NaN, 0, null, grade.verdict(), false);
    }

    static CriterionResult measured(Criterion criterion, Measurement taken, Criterion.Bands bands) {
        if (!taken.known()) {
            return notLookedAt(criterion, bands);
        }
        double off = taken.giveOrTake();
        Verdict verdict = Verdict.of(taken.value(), bands.green(), bands.amber());
        boolean open = Verdict.of(taken.value() - off, bands.green(), bands.amber()) != verdict
                || Verdict.of(taken.value() + off, bands.green(), bands.amber()) != verdict;
        return new CriterionResult(criterion, taken.how(), taken.value(), bands.deviation(taken.value()), off, bands, verdict, open);
    }

    CriterionResult judged(Verdict other) {
        return new CriterionResult(criterion, how, value, deviation, giveOrTake, bands, other, open);
    }
}
