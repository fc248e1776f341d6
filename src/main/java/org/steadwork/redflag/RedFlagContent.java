package org.steadwork.redflag;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.PublishedRule;
import org.steadwork.redflag.rules.Screening;
import org.steadwork.redflag.rules.Urgency;

/** The red-flag content, read once at the start: catalogue, words of levels and suspensions, published rules, safety net. */
@Startup
@Singleton
class RedFlagContent implements ReadEarly {

    /** What a level asks for, in words. */
    record LevelWords(String name, String headline, String meaning, String contactWithin, String recipient, List<String> tell) {
    }

    /** What a token suspends and what stays allowed, in words. */
    record TokenWords(String blocks, String allowed) {
    }

    /**
     * The words of a published rule.
     *
     * @param offeredWith the questions that call for it
     * @param notWith the questions whose yes takes it back: it was not made for such a patient
     */
    record RuleWords(PublishedRule rule, String key, String name, List<String> offeredWith, List<String> notWith, String applies, List<Item> items,
                     String accuracy, String caution, String source) {
    }

    /** One item of a published rule; an age item is read from the date of birth. */
    record Item(String key, String words, OptionalInt ageAtLeast) {
    }

    private final Catalogue catalogue = new CatalogueReader().read();
    private final Screening screening = new Screening(catalogue);
    private final Map<Urgency, LevelWords> levels = levels();
    private final Map<String, TokenWords> tokens = tokens();
    private final Map<String, RuleWords> rules = rules();
    private final SafetyNet safetyNet = SafetyNet.read(catalogue);

    Catalogue catalogue() {
        return catalogue;
    }

    Screening screening() {
        return screening;
    }

    LevelWords level(Urgency urgency) {
        return levels.get(urgency);
    }

    /** Says what a token suspends; one for a region names it. */
    TokenWords token(String token) {
        int colon = token.indexOf(':');
        if (colon < 0) {
            return tokens.get(token);
        }
        TokenWords words = tokens.get(token.substring(0, colon));
        return new TokenWords(words.blocks() + ": " + region(token.substring(colon + 1)), words.allowed());
    }

    String region(String key) {
        return safetyNet.label(key);
    }

    Map<String, RuleWords> publishedRules() {
        return rules;
    }

    SafetyNet safetyNet() {
        return safetyNet;
    }

    /** Returns the words in which a question, fact, rule or rule item is asked. */
    String prompt(String key) {
        if (key.startsWith("rule:")) {
            return rules.get(key.substring("rule:".length())).name();
        }
        return catalogue.question(key).map(question -> question.prompt())
                .or(() -> catalogue.fact(key).map(fact -> fact.prompt()))
                .or(() -> item(key).map(Item::words))
                .orElse(key);
    }

    private Optional<Item> item(String key) {
        return rules.values().stream().flatMap(rule -> rule.items().stream()).filter(item -> item.key().equals(key)).findFirst();
    }

    private static Map<Urgency, LevelWords> levels() {
        Entry file = Content.yaml("red-flags/urgency.yaml");
        file.text("source");
        Map<Urgency, LevelWords> levels = new LinkedHashMap<>();
        for (Entry entry : file.entries("levels")) {
            levels.put(entry.constant("level", Urgency.class), new LevelWords(entry.text("name"), entry.text("headline"),
                    entry.text("meaning"), entry.text("contact_within"), entry.text("recipient"), entry.texts("tell")));
        }
        if (levels.size() != Urgency.values().length) {
            throw file.problem("every level needs its words");
        }
        return levels;
    }

    private static Map<String, TokenWords> tokens() {
        Map<String, TokenWords> tokens = new LinkedHashMap<>();
        for (Entry entry : Content.yaml("red-flags/suspensions.yaml").entries("tokens")) {
            tokens.put(entry.text("token"), new TokenWords(entry.text("blocks"), entry.text("allowed")));
        }
        return tokens;
    }

    private Map<String, RuleWords> rules() {
        Entry file = Content.yaml("red-flags/published-rules.yaml");
        Map<String, RuleWords> words = new LinkedHashMap<>();
        for (Entry entry : file.entries("rules")) {
            PublishedRule rule = PublishedRule.ALL.stream().filter(one -> one.id().equals(entry.text("id"))).findFirst()
                    .orElseThrow(() -> entry.problem("there is no rule '" + entry.text("id") + "'"));
            List<Item> items = entry.entries("items").stream().map(item -> new Item(item.text("key"), item.text("words"),
                    item.has("age_at_least") ? OptionalInt.of(item.integer("age_at_least")) : OptionalInt.empty())).toList();
            if (!items.stream().map(Item::key).toList().equals(rule.items())) {
                throw entry.problem("the items must be those of the rule: " + rule.items());
            }
            Set<String> unknown = new HashSet<>(entry.texts("offered_with"));
            unknown.addAll(entry.texts("not_with"));
            unknown.removeIf(key -> catalogue.question(key).isPresent());
            if (!unknown.isEmpty()) {
                throw entry.problem("there is no question " + unknown);
            }
            words.put(rule.id(), new RuleWords(rule, entry.text("key"), entry.text("name"), entry.texts("offered_with"), entry.texts("not_with"), entry.text("applies"), items,
                    entry.text("accuracy"), entry.text("caution"), entry.text("source")));
        }
        if (words.size() != PublishedRule.ALL.size()) {
            throw file.problem("every published rule needs its words");
        }
        return words;
    }
}
