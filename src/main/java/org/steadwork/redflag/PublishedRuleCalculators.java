package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorFamily;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.Outcome;
import org.steadwork.redflag.rules.RuleResult;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.web.Initial;

/** Each published decision rule on the Bench, exactly as published; nothing here raises, lowers or clears a flag of a case. */
@ApplicationScoped
class PublishedRuleCalculators implements CalculatorFamily {

    @Inject
    RedFlagContent content;

    @Override
    public List<Calculator> calculators() {
        return content.publishedRules().values().stream().<Calculator>map(One::new).toList();
    }

    private record One(RedFlagContent.RuleWords words) implements Calculator {

        @Override
        public String key() {
            return "red-flags/" + words.key();
        }

        @Override
        public BenchGroup group() {
            return BenchGroup.RED_FLAGS;
        }

        @Override
        public String title() {
            return words.name();
        }

        @Override
        public String question() {
            return "What does the published rule say to these findings?";
        }

        @Override
        public List<String> limits() {
            return List.of("Applies to: " + words.applies() + ".", words.caution() + ".",
                    "The result is not a diagnosis and never lowers an open red flag. An answer that is unknown or not asked is not a no.");
        }

        @Override
        public List<Input> inputs() {
            return words.items().stream().map(item -> Input.answer(item.key(), item.words())).toList();
        }

        @Override
        public String standing() {
            return "Accuracy as published: " + words.accuracy() + ".";
        }

        @Override
        public List<String> sources() {
            return List.of(words.source());
        }

        @Override
        public BenchAnswer calculate(Inputs given) {
            Map<String, Answer> answers = new LinkedHashMap<>();
            words.items().forEach(item -> answers.put(item.key(), given.answer(item.key())));
            RuleResult result = words.rule().evaluate(ScreenAnswers.of(answers));
            Outcome outcome = result.outcome();
            BenchAnswer answer = BenchAnswer.of(Initial.large(outcome.label()))
                    .marked(outcome.callsForAction() ? Mark.OUT : Mark.NONE);
            result.count().ifPresent(count -> answer.headline("Count", count.words(), ""));
            words.items().forEach(item -> answer.step(item.words(), "as answered", answers.get(item.key()).label(), ""));
            List<String> open = new ArrayList<>();
            answers.forEach((key, said) -> {
                if (said.open()) {
                    open.add(key);
                }
            });
            if (outcome == Outcome.INCOMPLETE) {
                answer.note("Something that decides is unknown or not asked. Until it is known, act as if the rule were positive.");
            }
            answer.result("outcome", outcome.name().toLowerCase(Locale.ROOT)).result("calls_for_action", outcome.callsForAction()).result("open", open);
            result.count().ifPresent(count -> answer.result("lowest_count", count.low()).result("highest_count", count.high()));
            return answer;
        }
    }
}
