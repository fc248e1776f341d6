package org.steadwork.workplace.fit;

/** What was seen of a criterion that is looked at and not measured. */
public enum Grade {
    FITS(Verdict.IN_RANGE), PARTLY(Verdict.NEAR_THE_EDGE), DOES_NOT_FIT(Verdict.OUT_OF_RANGE), UNKNOWN(Verdict.NOT_LOOKED_AT),
    NOT_ASKED(Verdict.NOT_LOOKED_AT);

    private final Verdict verdict;

    Grade(Verdict verdict) {
        this.verdict = verdict;
    }

    public Verdict verdict() {
        return verdict;
    }
}
