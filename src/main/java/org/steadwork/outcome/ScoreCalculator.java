package org.steadwork.outcome;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Item;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.outcome.scoring.Threshold;

/** The score of one instrument on the Bench, made of its content alone. */
final class ScoreCalculator implements Calculator {

    private static final String ANSWERS = "answers";

    private final Instrument instrument;

    ScoreCalculator(Instrument instrument) {
        this.instrument = instrument;
    }

    @Override
    public String key() {
        return "score/" + instrument.key();
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Score: " + instrument.label();
    }

    @Override
    public String question() {
        return "What do the answers to the " + instrument.name() + ", version " + instrument.version() + ", come to?";
    }

    @Override
    public List<String> limits() {
        String use = switch (instrument.use()) {
            case OUTCOME -> "A score describes; it names no cause and no diagnosis.";
            case SCREEN -> "A screen for risk: it starts a conversation, predicts no one person, and a change on it means nothing.";
            case CHANGE_RATING -> "A person's own word on the change: it stands beside the scores, never instead of them.";
            case SURVEY -> "For surveillance: it says where trouble is, and diagnoses nothing.";
        };
        return List.of(use, instrument.form().notice(), instrument.permission());
    }

    @Override
    public List<Input> inputs() {
        List<Item> items = instrument.items().stream()
                .map(item -> new Item("Item " + item.number() + (item.topic().isEmpty() ? "" : ": " + item.topic()), item.min(), item.max())).toList();
        List<Integer> middle = instrument.items().stream().map(item -> Math.floorDiv(item.min() + item.max(), 2)).toList();
        return List.of(Input.items(ANSWERS, "Answers", items).hint("By item number. An item left empty stays unanswered; nothing is guessed.").example(middle));
    }

    @Override
    public String standing() {
        return "The arithmetic was checked against published or computed examples and against 1,000 random answer sets scored in R. Scoring rests on: "
                + instrument.source() + ".";
    }

    @Override
    public List<String> sources() {
        return Stream.concat(Stream.of(instrument.source()), instrument.thresholds().stream().map(Threshold::source)).distinct().toList();
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        List<Integer> answers = given.items(ANSWERS);
        try {
            return answer(instrument.score(answers));
        } catch (InvalidAnswer refused) {
            throw CalculatorRefusal.at(given.path(ANSWERS) + "[" + (refused.itemNumber() - 1) + "]", refused.getMessage(),
                    answers.get(refused.itemNumber() - 1), "an answer that agrees with the item before");
        }
    }

    private BenchAnswer answer(Scored scored) {
        String shown = shown(scored);
        BenchAnswer answer = BenchAnswer.of(band(scored));
        if (!shown.isEmpty()) {
            answer.headline(instrument.label(), shown, instrument.unit());
        }
        answer.step("Score", instrument.rule().words(), scored.working(), "");
        scored.parts().forEach((part, value) -> answer.step(part, "part of the working above", Shown.amount(value), ""));
        if (scored.estimated()) {
            answer.note("Estimated: the rule filled in the items " + scored.missing() + ". Marked wherever it is shown.");
        }
        instrument.notes().forEach(answer::note);
        return answer.result("value", number(scored.value())).result("low", number(scored.low())).result("high", number(scored.high()))
                .result("unit", instrument.unit().isEmpty() ? "points" : instrument.unit()).result("lowest", instrument.lowest())
                .result("highest", instrument.highest()).result("direction", instrument.direction().words()).result("estimated", scored.estimated())
                .result("missing", scored.missing()).result("parts", scored.parts()).result("groups", instrument.groups(scored))
                .result("version", instrument.version());
    }

    private String band(Scored scored) {
        List<String> groups = instrument.groups(scored);
        if (!groups.isEmpty()) {
            return groups.size() == 1 ? ScoreGrids.capital(groups.get(0)) : "Left open by missing answers: " + String.join(" or ", groups);
        }
        if (scored.value().isEmpty()) {
            return instrument.rule().hasTotal() ? scored.working() : "Counts of regions; no total";
        }
        return "On a scale from " + Shown.amount(instrument.lowest()) + " to " + Shown.amount(instrument.highest()) + ", " + instrument.direction().words();
    }

    private String shown(Scored scored) {
        if (scored.value().isPresent()) {
            return Shown.number(instrument, scored.value().getAsDouble());
        }
        return scored.low().isEmpty() ? "" : Shown.number(instrument, scored.low().getAsDouble()) + " to "
                + Shown.number(instrument, scored.high().getAsDouble());
    }

    static Double number(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
