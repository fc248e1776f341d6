package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.MeanOfParts;
import org.steadwork.outcome.scoring.ScaledMean;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.outcome.scoring.SumOfItems;
import org.steadwork.outcome.scoring.SumOfParts;
import org.steadwork.outcome.scoring.SumPercent;
import org.steadwork.web.Form;

/**
 * The entry of one instrument by its items.
 *
 * @param scored what is stored for the day, or null
 * @param earlier the score of the time before, or null: its answers show when they are asked for
 */
record ScoreEntry(Instrument instrument, LocalDate on, Form form, Scored scored, String value, Score earlier) {

    /** One item with its field; {@code earlier} is the answer of the time before, blank for none. */
    record Row(int number, String topic, String field, String range, int min, int max, String earlier) {
    }

    /** How many of the items from first to last a score needs. */
    record Need(String label, int first, int last, int needed) {
    }

    public List<Row> rows() {
        return instrument.items().stream().map(item -> new Row(item.number(), item.topic(), "i" + item.number(), item.min() + " to " + item.max(),
                item.min(), item.max(), before(item.number()))).toList();
    }

    private String before(int number) {
        if (earlier == null || earlier.answers().size() < number) {
            return "";
        }
        Integer answer = earlier.answers().get(number - 1);
        return answer == null ? "not answered" : answer.toString().replace('-', '\u2212');
    }

    /** Says from how many answers on there is a score, for the whole or for each part. */
    public List<Need> needs() {
        int all = instrument.items().size();
        if (instrument.rule() instanceof SumPercent rule) {
            return List.of(new Need("Score possible from " + rule.minimumAnswered(), 1, all, rule.minimumAnswered()));
        }
        if (instrument.rule() instanceof ScaledMean rule) {
            return List.of(new Need("Score possible from " + rule.minimumAnswered(), 1, all, rule.minimumAnswered()));
        }
        if (instrument.rule() instanceof SumOfItems rule) {
            boolean bounds = rule.missing() == SumOfItems.Missing.BOUND;
            return List.of(bounds ? new Need("Score from all " + all + ", bounds from fewer", 1, all, all)
                    : new Need("Score possible from " + rule.minimumAnswered(), 1, all, rule.minimumAnswered()));
        }
        if (instrument.rule() instanceof MeanOfParts rule) {
            return List.of(new Need("Score possible from " + (all - rule.mayMiss()), 1, all, all - rule.mayMiss()));
        }
        if (instrument.rule() instanceof SumOfParts rule) {
            return rule.parts().stream().map(part -> {
                int needed = part.last() - part.first() + 1 - part.mayMiss();
                return new Need(ScoreGrids.capital(part.name()) + " from " + needed, part.first(), part.last(), needed);
            }).toList();
        }
        // groups are named as soon as they are sure, and surveys only count: no number of answers is needed
        return List.of();
    }

    /** How many items have something in their field. */
    public long answered() {
        return instrument.items().stream().filter(item -> form.has("i" + item.number())).count();
    }

    public String rule() {
        return ScoreGrids.capital(instrument.rule().words());
    }
}
