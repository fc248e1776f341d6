package org.steadwork.outcome.scoring;

/** Says why there is no score. */
final class TooFew {

    private TooFew() {
    }

    static String words(ItemAnswers answers, int minimum) {
        return "No score: " + answers.answered() + " of " + answers.items().size() + " items answered, " + minimum + " needed";
    }
}
