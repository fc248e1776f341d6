package org.steadwork.outcome.scoring;

/**
 * The mean of the answered items, moved and stretched: (mean − offset) × factor, not rounded.
 *
 * <p>With offset 1 and factor 25, items from 1 to 5 give 0 to 100; with offset 0 and factor 1 it is the plain mean.
 * Fewer than {@code minimumAnswered} answers give no score.
 *
 * @param asManyAsNamed true where the person names the items, so that one left open is not missing
 * Source: DASH and QuickDASH scoring guide (Institute for Work and Health); Levine et al. 1993 for the plain mean.
 */
public record ScaledMean(double offset, double factor, int minimumAnswered, boolean asManyAsNamed) implements ScoringRule {

    @Override
    public Scored score(ItemAnswers answers) {
        int answered = answers.answered();
        if (answered < Math.max(1, minimumAnswered)) {
            return Scored.none(answers, TooFew.words(answers, minimumAnswered));
        }
        double value = ((double) answers.sum() / answered - offset) * factor;
        String mean = answers.sum() + " ÷ " + answered;
        String formula = plainMean() ? mean : "(" + mean + " − " + Plain.number(offset) + ") × " + Plain.number(factor);
        Scored scored = Scored.of(value, answers, formula + " = " + Plain.number(value));
        return asManyAsNamed ? scored.asNamed() : scored;
    }

    private boolean plainMean() {
        return offset == 0 && factor == 1;
    }

    @Override
    public String words() {
        String formula = plainMean() ? "mean of the answered items"
                : "(mean of the answered items − " + Plain.number(offset) + ") × " + Plain.number(factor);
        return formula + "; at least " + minimumAnswered + " answered";
    }
}
