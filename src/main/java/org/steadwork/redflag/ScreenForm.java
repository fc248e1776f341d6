package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.web.Form;

/** Reads and shows the answers of a screen as form fields; a field is {@code answer.} and the key, a tick {@code answer.question.tick}. */
@ApplicationScoped
class ScreenForm {

    private static final int LONGEST_NOTE = 1000;

    @Inject
    RedFlagContent content;

    static String field(String key) {
        return "answer." + key.replace('/', '.');
    }

    /** Returns every key that the page can ask. */
    private Stream<String> keys() {
        return Stream.of(content.catalogue().questions().stream().map(question -> question.key()),
                content.catalogue().facts().stream().map(fact -> fact.key()),
                content.publishedRules().values().stream().flatMap(rule -> rule.rule().items().stream())).flatMap(keys -> keys);
    }

    Set<String> regions(Form form) {
        Set<String> regions = new LinkedHashSet<>(form.values("region"));
        regions.retainAll(content.catalogue().regions());
        return regions;
    }

    /** Reads the answers that the page sent; a question that it did not show is not among them. */
    Map<String, GivenAnswer> read(Form form) {
        Map<String, GivenAnswer> given = new LinkedHashMap<>();
        keys().forEach(key -> {
            String field = field(key);
            if (form.has(field)) {
                Answer answer = form.choice(field, content.prompt(key), Answer.class);
                String note = form.text("note." + field, LONGEST_NOTE);
                boolean declined = form.ticked("declined." + field);
                if (declined && answer == Answer.YES) {
                    form.error(field, "A question answered yes was not declined. Take back one of the two.");
                }
                given.put(key, new GivenAnswer(answer == null ? Answer.NOT_ASKED : answer, note, declined));
                readTicks(form, key, given);
            }
        });
        return given;
    }

    /** A tick is a yes; an empty box says nothing by itself, since the question's own answer does. */
    private void readTicks(Form form, String key, Map<String, GivenAnswer> given) {
        content.catalogue().question(key).ifPresent(question -> question.ticks().forEach(tick -> {
            String tickKey = key + "/" + tick.key();
            boolean ticked = form.ticked(field(tickKey));
            given.put(tickKey, ticked ? new GivenAnswer(Answer.YES, null, false) : GivenAnswer.NONE);
            if (ticked && given.get(key).answer() != Answer.YES) {
                given.put(key, new GivenAnswer(Answer.YES, given.get(key).note(), false));
            }
        }));
    }

    /** Shows stored answers as the form that would give them. */
    Form show(RedFlagScreen screen) {
        Form form = Form.empty().withAll("region", List.copyOf(new TreeSet<>(screen.regions()))).with("version", screen.version());
        screen.answersByKey().forEach((key, answer) -> {
            form.with(field(key), key.contains("/") ? answer.answer() == Answer.YES ? "yes" : "" : name(answer.answer()));
            form.with("note." + field(key), answer.note());
            form.with("declined." + field(key), answer.declined() ? "yes" : "");
        });
        return form;
    }

    /** Returns the typed answers for an evaluation that stores nothing. */
    ScreenAnswers answers(Map<String, GivenAnswer> given) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        given.forEach((key, one) -> answers.put(key, one.answer()));
        return ScreenAnswers.of(answers);
    }

    QuestionRow row(String key, Form form, String hint) {
        String field = field(key);
        String value = form.has(field) ? form.value(field) : name(Answer.NOT_ASKED);
        List<QuestionRow.TickRow> ticks = content.catalogue().question(key).map(question -> question.ticks().stream()
                .map(tick -> new QuestionRow.TickRow(field(key + "/" + tick.key()), tick.words(), form.ticked(field(key + "/" + tick.key()))))
                .toList()).orElse(List.of());
        String note = form.has("note." + field) ? form.value("note." + field) : null;
        boolean danger = content.catalogue().question(key).isPresent();
        return new QuestionRow(field, content.prompt(key), hint, value, danger && value.equals(name(Answer.YES)), note,
                form.ticked("declined." + field), ticks);
    }

    private static String name(Answer answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }
}
