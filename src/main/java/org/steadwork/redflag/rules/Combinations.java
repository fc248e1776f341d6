package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.CombinationRule.Level;

/** Evaluates the combination rules over the answers of one screen. */
final class Combinations {

    private final Catalogue catalogue;
    private final ScreenAnswers answers;
    private final Tokens tokens;

    Combinations(Catalogue catalogue, ScreenAnswers answers, Tokens tokens) {
        this.catalogue = catalogue;
        this.answers = answers;
        this.tokens = tokens;
    }

    /** Returns the rules that hold when "unknown" is taken as "yes", each at its highest level. */
    List<Raised> raised() {
        List<Raised> raised = new ArrayList<>();
        for (CombinationRule rule : catalogue.rules()) {
            Optional<Urgency> level = level(rule, this::unknownAsYes);
            level.ifPresent(urgency -> raised.add(raised(rule, urgency, level(rule, answers::of).equals(level))));
        }
        return raised;
    }

    private Raised raised(CombinationRule rule, Urgency urgency, boolean certain) {
        Set<String> because = new LinkedHashSet<>();
        Set<String> regions = new LinkedHashSet<>();
        rule.keys().stream().filter(key -> unknownAsYes(key) == Answer.YES && !key.startsWith("region:")).forEach(key -> {
            because.add(key);
            catalogue.question(key).map(Question::region).ifPresent(regions::add);
        });
        return new Raised(rule.id(), rule.name(), urgency, rule.pointsTo(), rule.action(), tokens.of(rule.suspends(), regions),
                certain, because, rule.basis());
    }

    /** Returns the rules that hold and only advise. */
    List<CombinationRule> advice() {
        return catalogue.rules().stream().filter(rule -> rule.levels().stream()
                .anyMatch(level -> level.urgency().isEmpty() && level.when().evaluate(this::unknownAsYes) == Answer.YES)).toList();
    }

    /**
     * Returns the answers not asked for which a rule waits that something already speaks for and that could go above
     * {@code reached}.
     */
    List<OpenAnswer> stillOpen(Optional<Urgency> reached) {
        List<OpenAnswer> open = new ArrayList<>();
        for (CombinationRule rule : catalogue.rules()) {
            if (!spokenFor(rule)) {
                continue;
            }
            for (Level level : rule.levels()) {
                if (level.urgency().isPresent() && reached.map(urgency -> level.urgency().get().compareTo(urgency) > 0).orElse(true)) {
                    level.when().unsettled(this::unknownAsYes).stream().filter(key -> open.stream().noneMatch(one -> one.key().equals(key)))
                            .forEach(key -> open.add(new OpenAnswer(key, answers.of(key), level.urgency().get(), false)));
                }
            }
        }
        return open;
    }

    private boolean spokenFor(CombinationRule rule) {
        return rule.keys().stream().filter(key -> !key.startsWith("region:") && catalogue.fact(key).isEmpty())
                .anyMatch(key -> unknownAsYes(key) == Answer.YES);
    }

    private static Optional<Urgency> level(CombinationRule rule, Function<String, Answer> answers) {
        return rule.levels().stream().filter(level -> level.urgency().isPresent() && level.when().evaluate(answers) == Answer.YES)
                .findFirst().flatMap(Level::urgency);
    }

    private Answer unknownAsYes(String key) {
        Answer answer = answers.of(key);
        return answer == Answer.UNKNOWN ? Answer.YES : answer;
    }

    /** Leaves out what another raised rule says as well, at least as urgently and suspending at least as much. */
    static List<Raised> withoutThoseThatGiveWay(Catalogue catalogue, List<Raised> raised) {
        return raised.stream().filter(one -> {
            Set<String> to = catalogue.rule(one.origin()).map(CombinationRule::givesWayTo).orElse(Set.of());
            return raised.stream().noneMatch(other -> to.contains(other.origin()) && other.urgency().atLeast(one.urgency())
                    && (other.certain() || !one.certain())
                    && (other.suspends().containsAll(one.suspends()) || other.suspends().contains("all_treatment")));
        }).toList();
    }
}
