package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.Scored;

/** Seeded random answer sets with missing items, and our scores of them in the form in which the check in R writes its own. */
final class RandomAnswers {

    private static final double[] SHARES_MISSING = {0, 0.05, 0.2, 0.5};
    private static final double CONTRADICTIONS = 0.01;
    private static final int SURVEY_QUESTIONS = 3;

    private RandomAnswers() {
    }

    static List<List<Integer>> of(Instrument instrument, int sets, long seed) {
        Random random = new Random(seed + instrument.key().hashCode());
        return IntStream.range(0, sets).mapToObj(set -> {
            double missing = SHARES_MISSING[set % SHARES_MISSING.length];
            List<Integer> answers = new ArrayList<>();
            for (Item item : instrument.items()) {
                boolean gap = random.nextDouble() < missing;
                int value = item.min() + random.nextInt(item.max() - item.min() + 1);
                int gate = (item.number() - 1) / SURVEY_QUESTIONS * SURVEY_QUESTIONS;
                // after a "no" the further questions of a region stay open or no, but for a few contradictions
                boolean shut = instrument.use() == Instrument.Use.SURVEY && gate < item.number() - 1 && Integer.valueOf(0).equals(answers.get(gate));
                answers.add(gap ? null : Integer.valueOf(shut && random.nextDouble() >= CONTRADICTIONS ? 0 : value));
            }
            return answers;
        }).toList();
    }

    static String text(List<Integer> answers) {
        return answers.stream().map(answer -> answer == null ? "_" : answer.toString()).collect(Collectors.joining(" "));
    }

    /** Writes value, low, high, parts and groups between commas; "refused" with the item for answers that are refused. */
    static String outcome(Instrument instrument, List<Integer> answers) {
        Scored scored;
        try {
            scored = instrument.score(answers);
        } catch (InvalidAnswer refused) {
            return "refused " + refused.itemNumber() + ",,,,";
        }
        String parts = scored.parts().values().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return number(scored.value()) + "," + number(scored.low()) + "," + number(scored.high()) + "," + parts + ","
                + String.join(";", scored.groups());
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? String.valueOf(value.getAsDouble()) : "";
    }
}
