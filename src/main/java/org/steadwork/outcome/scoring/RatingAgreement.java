package org.steadwork.outcome.scoring;

/**
 * The person's own rating of change beside the judgement on the scores. When they disagree, that is a reason to talk, and says nothing
 * about who is right: the rating follows how things are now more than how they changed.
 *
 * @param score what the scores say; {@code person} what the rating says
 * @param prompt what to do about a disagreement, in words; blank when they agree or the scores are not judged
 * Source: Kamper et al., J Man Manip Ther 2009;17:163 (from memory); the prompt is a rule of ours.
 */
public record RatingAgreement(Way score, Way person, String prompt) {

    /** Which way things went. */
    public enum Way {
        BETTER("better"), SAME("no change"), WORSE("worse"), OPEN("not judged");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Lays a rating beside a judgement on the change since the same day.
     *
     * @param rating an instrument that rates change; another is refused
     * @param answer on the scale of that instrument
     */
    public static RatingAgreement of(ChangeVerdict verdict, Instrument rating, double answer) {
        ChangeRating scale = rating.changeRating()
                .orElseThrow(() -> new IllegalArgumentException(rating.name() + " does not rate change"));
        if (!(answer >= rating.lowest() && answer <= rating.highest())) {
            throw new IllegalArgumentException(rating.name() + " goes from " + Plain.number(rating.lowest()) + " to " + Plain.number(rating.highest())
                    + ", but the rating is " + answer);
        }
        Way person = answer >= scale.betterFrom() ? Way.BETTER : answer <= scale.worseTo() ? Way.WORSE : Way.SAME;
        Way score = way(verdict.kind());
        String prompt = score == Way.OPEN || score == person ? ""
                : "The scores say " + score.words() + ", the person says " + person.words() + " (" + Plain.signed(answer) + "): talk about it.";
        return new RatingAgreement(score, person, prompt);
    }

    public boolean disagrees() {
        return !prompt.isEmpty();
    }

    private static Way way(ChangeVerdict.Kind kind) {
        return switch (kind) {
            case WORSE -> Way.WORSE;
            case NO_REAL_CHANGE, POSSIBLY_IMPORTANT -> Way.SAME;
            case REAL_NOT_YET_IMPORTANT, IMPORTANT, REAL_IMPORTANCE_UNKNOWN, BEYOND_IMPORTANCE_ERROR_UNKNOWN -> Way.BETTER;
            case NOT_JUDGED -> Way.OPEN;
        };
    }
}
