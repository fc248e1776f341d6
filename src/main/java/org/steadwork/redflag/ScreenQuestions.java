package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.steadwork.redflag.RedFlagContent.Item;
import org.steadwork.redflag.RedFlagContent.RuleWords;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.Fact;
import org.steadwork.redflag.rules.OpenAnswer;
import org.steadwork.redflag.rules.Question;
import org.steadwork.redflag.rules.RuleResult;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.web.Form;

/** Lays out the questions of a screen: what decides which are due, those due, those a rule asks for, the rest. */
@ApplicationScoped
class ScreenQuestions {

    @Inject
    RedFlagContent content;

    @Inject
    ScreenForm forms;

    /** A published rule with its items, as offered on the page. */
    public record RulePanel(String name, String result, String applies, String accuracy, String caution, String source,
                            List<QuestionRow> rows) {
    }

    /** Everything that the page can ask, each key once. */
    public record Layout(List<QuestionRow> first, List<QuestionGroup> due, List<QuestionRow> askedForByRules,
                         List<RulePanel> rules, List<QuestionGroup> others) {
    }

    Layout layout(ScreenResult result, Form form, Set<String> knownFromAge) {
        Set<String> shown = new LinkedHashSet<>(knownFromAge);
        List<QuestionRow> first = rows(result.facts(), form, shown, null);
        Map<String, List<String>> byTitle = new LinkedHashMap<>();
        result.due().forEach(due -> byTitle.computeIfAbsent(due.title(), title -> new ArrayList<>()).add(due.key()));
        List<QuestionGroup> due = new ArrayList<>();
        byTitle.forEach((title, keys) -> add(due, title, rows(keys, form, shown, null)));
        List<QuestionRow> asked = rows(result.open().stream().filter(open -> !open.due()).map(OpenAnswer::key)
                .filter(key -> content.catalogue().question(key).isPresent() || content.catalogue().fact(key).isPresent()).toList(),
                form, shown, "A rule asks for this");
        asked = new ArrayList<>(asked);
        asked.addAll(rows(alsoAnswered(form), form, shown, null));
        return new Layout(first, due, asked, panels(result, form), others(form, shown));
    }

    /** What was answered without being due stays in sight. */
    private List<String> alsoAnswered(Form form) {
        return Stream.concat(content.catalogue().questions().stream().map(Question::key), content.catalogue().facts().stream().map(Fact::key))
                .filter(key -> form.has(ScreenForm.field(key)) && !form.value(ScreenForm.field(key)).equals("not_asked")).toList();
    }

    private List<QuestionRow> rows(List<String> keys, Form form, Set<String> shown, String hint) {
        return keys.stream().filter(shown::add).map(key -> forms.row(key, form, hint)).toList();
    }

    private static void add(List<QuestionGroup> groups, String title, List<QuestionRow> rows) {
        if (!rows.isEmpty()) {
            groups.add(new QuestionGroup(title, null, rows));
        }
    }

    private List<QuestionGroup> others(Form form, Set<String> shown) {
        Map<String, List<String>> byRegion = new LinkedHashMap<>();
        for (Question question : content.catalogue().questions()) {
            byRegion.computeIfAbsent(question.region(), region -> new ArrayList<>()).add(question.key());
        }
        List<QuestionGroup> groups = new ArrayList<>();
        add(groups, "About the complaint", rows(content.catalogue().facts().stream().map(Fact::key).toList(), form, shown, null));
        byRegion.forEach((region, keys) ->
                add(groups, region.equals(Catalogue.GENERAL) ? "General" : content.region(region), rows(keys, form, shown, null)));
        return groups;
    }

    /** Offers a rule when one of its questions is yes or unknown, or when something of it was answered, unless it was not made for the patient. */
    private List<RulePanel> panels(ScreenResult result, Form form) {
        List<RulePanel> panels = new ArrayList<>();
        for (RuleWords words : content.publishedRules().values()) {
            boolean offered = words.offeredWith().stream().map(key -> form.value(ScreenForm.field(key)))
                    .anyMatch(value -> value.equals("yes") || value.equals("unknown"));
            boolean begun = words.items().stream().anyMatch(item -> form.has(ScreenForm.field(item.key())));
            boolean notMadeForThem = words.notWith().stream().anyMatch(key -> form.value(ScreenForm.field(key)).equals("yes"));
            if ((offered || begun) && !notMadeForThem) {
                List<QuestionRow> rows = words.items().stream().filter(item -> item.ageAtLeast().isEmpty())
                        .map(item -> forms.row(item.key(), form, null)).toList();
                panels.add(new RulePanel(words.name(), result(result.published().get(words.rule().id()), words), words.applies(),
                        words.accuracy(), words.caution(), words.source(), rows));
            }
        }
        return panels;
    }

    private static String result(RuleResult result, RuleWords words) {
        return result.outcome().label() + result.count().map(count -> " (" + count.words() + ")").orElse("")
                + (words.items().stream().map(Item::ageAtLeast).anyMatch(age -> age.isPresent()) ? "; age counted from the date of birth" : "");
    }
}
