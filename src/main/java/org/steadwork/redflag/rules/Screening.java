package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.ScreenResult.DueKey;

/**
 * Works out what the answers of a screen amount to.
 *
 * <p>A screen is clear only when every due question is "no"; an "unknown" is acted on as a "yes"; more "yes" never lowers the
 * level, and taking a "no" back never lowers it either. It must not be used as a diagnosis.
 */
public final class Screening {

    private final Catalogue catalogue;

    public Screening(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * Evaluates a screen.
     *
     * @param regions content keys of the regions complained of; when empty, every region is asked about
     * @param leftOpen questions that earlier screens left open; they stay due
     * @param given the answers, with the ages that are known
     */
    public ScreenResult evaluate(Occasion occasion, Set<String> regions, Set<String> leftOpen, ScreenAnswers given) {
        return evaluate(occasion, regions, Set.of(), leftOpen, given);
    }

    /**
     * The same where regions came up since the last screen.
     *
     * @param newRegions those of {@code regions} that no earlier screen asked about: all their questions are due, at a review too
     */
    public ScreenResult evaluate(Occasion occasion, Set<String> regions, Set<String> newRegions, Set<String> leftOpen, ScreenAnswers given) {
        Set<String> asked = regions.isEmpty() ? new LinkedHashSet<>(catalogue.regions()) : regions;
        Map<String, RuleResult> published = new LinkedHashMap<>();
        ScreenAnswers answers = given.with(derived(asked, given, published));
        Tokens tokens = new Tokens(catalogue, asked);
        Combinations combinations = new Combinations(catalogue, answers, tokens);
        List<Raised> raised = Stream.concat(questions(answers, tokens), combinations.raised().stream()).toList();
        Optional<Urgency> urgency = Urgency.highest(raised.stream().map(Raised::urgency).toList());

        DueQuestions questions = new DueQuestions(catalogue, occasion, asked, newRegions, answers);
        List<DueKey> due = questions.keys(leftOpen);
        List<OpenAnswer> open = new ArrayList<>(dueAndOpen(due, answers));
        combinations.stillOpen(urgency).stream().filter(more -> open.stream().noneMatch(one -> one.key().equals(more.key())))
                .forEach(open::add);
        boolean unsettled = !open.isEmpty() || raised.stream().anyMatch(one -> !one.certain());

        Set<String> suspended = new LinkedHashSet<>();
        raised.forEach(one -> suspended.addAll(one.suspends()));
        for (DueKey one : due) {
            catalogue.question(one.key()).filter(question -> answers.of(question.key()) == Answer.NOT_ASKED)
                    .ifPresent(question -> suspended.addAll(tokens.of(questions.untilAsked(question), question.region())));
        }
        return new ScreenResult(verdict(raised, unsettled), unsettled, urgency,
                Urgency.highest(Stream.concat(urgency.stream(), open.stream().map(OpenAnswer::could)).toList()),
                Combinations.withoutThoseThatGiveWay(catalogue, raised), open, questions.facts(), due, suspended,
                combinations.advice(), published);
    }

    private Map<String, Answer> derived(Set<String> regions, ScreenAnswers given, Map<String, RuleResult> published) {
        Map<String, Answer> derived = new LinkedHashMap<>();
        catalogue.regions().forEach(region -> derived.put("region:" + region, regions.contains(region) ? Answer.YES : Answer.NO));
        for (PublishedRule rule : PublishedRule.ALL) {
            derived.put("rule:" + rule.id(), rule.callsForAction(given));
            published.put(rule.id(), rule.evaluate(given));
        }
        return derived;
    }

    private Stream<Raised> questions(ScreenAnswers answers, Tokens tokens) {
        return catalogue.questions().stream().filter(question -> {
            Answer answer = answers.of(question.key());
            return answer == Answer.YES || answer == Answer.UNKNOWN;
        }).map(question -> new Raised(question.key(), question.name(), question.urgency(), question.pointsTo(), question.action(),
                tokens.of(question.suspends(), question.region()), answers.of(question.key()) == Answer.YES,
                Set.of(question.key()), question.source()));
    }

    private List<OpenAnswer> dueAndOpen(List<DueKey> due, ScreenAnswers answers) {
        return due.stream().map(DueKey::key).filter(key -> answers.of(key).open())
                .map(key -> new OpenAnswer(key, answers.of(key),
                        catalogue.question(key).map(Question::urgency).orElse(Urgency.WATCH), true))
                .toList();
    }

    private static Verdict verdict(List<Raised> raised, boolean unsettled) {
        if (raised.stream().anyMatch(Raised::certain)) {
            return Verdict.POSITIVE;
        }
        return unsettled ? Verdict.INCOMPLETE : Verdict.CLEAR;
    }
}
