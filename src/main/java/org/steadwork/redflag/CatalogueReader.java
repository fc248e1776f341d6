package org.steadwork.redflag;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.CombinationRule;
import org.steadwork.redflag.rules.Condition;
import org.steadwork.redflag.rules.Fact;
import org.steadwork.redflag.rules.Layer;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.PermanentBar;
import org.steadwork.redflag.rules.PublishedRule;
import org.steadwork.redflag.rules.Question;
import org.steadwork.redflag.rules.Urgency;

/** Turns the content files of the red flags into the catalogue and refuses what does not fit together. */
final class CatalogueReader {

    private static final String NONE = "none";

    private final Set<String> tokens = new LinkedHashSet<>();
    private final Set<String> regionTokens = new HashSet<>();
    private final Set<String> known = new LinkedHashSet<>();
    private final Map<String, List<String>> ticks = new LinkedHashMap<>();

    Catalogue read() {
        Entry suspensions = Content.yaml("red-flags/suspensions.yaml");
        readTokens(suspensions);
        List<Question> questions = questions();
        List<Fact> facts = facts();
        questions.forEach(question -> known.add("region:" + question.region()));
        for (PublishedRule rule : PublishedRule.ALL) {
            known.add("rule:" + rule.id());
            known.addAll(rule.items());
        }
        ConditionReader conditions = new ConditionReader(known, ticks);
        Entry layers = Content.yaml("red-flags/layers.yaml");
        Entry again = layers.entry("full_again").orElseThrow(() -> layers.problem("'full_again' is missing"));
        List<CombinationRule> rules = rules(conditions);
        Set<String> origins = rules.stream().map(CombinationRule::id).collect(Collectors.toCollection(HashSet::new));
        questions.forEach(question -> origins.add(question.key()));
        return Catalogue.of(questions, facts, layers(layers, conditions), knownKey(again, again.text("after")), rules,
                bars(suspensions, origins), regionTokens);
    }

    private void readTokens(Entry file) {
        file.text("source");
        for (Entry entry : file.entries("tokens")) {
            if (!tokens.add(entry.text("token"))) {
                throw entry.problem("token '" + entry.text("token") + "' is written twice");
            }
            if (entry.text("scope").equals("region")) {
                regionTokens.add(entry.text("token"));
            }
        }
    }

    private List<Question> questions() {
        Entry file = Content.yaml("red-flags/items.yaml");
        file.text("source");
        Map<String, List<Question.Tick>> ticksOf = new LinkedHashMap<>();
        for (Entry composite : file.entries("composites")) {
            ticksOf.put(composite.text("question"), composite.entries("items").stream()
                    .map(item -> new Question.Tick(item.text("key"), item.text("words"))).toList());
        }
        List<Question> questions = new ArrayList<>();
        for (Entry row : Content.csv("red-flags/questions.csv")) {
            String key = row.text("key");
            unique(row, key);
            List<Question.Tick> inside = ticksOf.getOrDefault(key, List.of());
            List<String> keys = inside.stream().map(tick -> key + "/" + tick.key()).toList();
            if (!keys.isEmpty()) {
                ticks.put(key, keys);
                known.addAll(keys);
            }
            questions.add(new Question(row.text("region"), key, row.text("name"), row.text("prompt"), row.text("points_to"),
                    row.constant("urgency", Urgency.class), row.text("action"), suspends(row), row.text("source"), inside));
        }
        if (!ticks.keySet().equals(ticksOf.keySet())) {
            throw file.problem("every composite must be a question: " + ticksOf.keySet());
        }
        return questions;
    }

    private List<Fact> facts() {
        Entry file = Content.yaml("red-flags/facts.yaml");
        file.text("source");
        List<Fact> facts = new ArrayList<>();
        for (Entry entry : file.entries("facts")) {
            unique(entry, entry.text("key"));
            facts.add(new Fact(entry.text("key"), entry.text("prompt"),
                    entry.has("age_at_least") ? OptionalInt.of(entry.integer("age_at_least")) : OptionalInt.empty()));
        }
        return facts;
    }

    private void unique(Entry entry, String key) {
        if (!known.add(key)) {
            throw entry.problem("key '" + key + "' is written twice");
        }
    }

    private Set<String> suspends(Entry entry) {
        List<String> named = entry.texts("suspends").stream().filter(token -> !token.equals(NONE)).toList();
        named.stream().filter(token -> !tokens.contains(token)).findFirst().ifPresent(token -> {
            throw entry.problem("there is no suspension token '" + token + "'");
        });
        return Set.copyOf(named);
    }

    private List<Layer> layers(Entry file, ConditionReader conditions) {
        file.text("source");
        List<Layer> layers = new ArrayList<>();
        for (Entry entry : file.entries("layers")) {
            Map<String, Set<String>> untilAsked = new LinkedHashMap<>();
            entry.entries("until_asked").forEach(less -> untilAsked.put(knownKey(less, less.text("question")), suspends(less)));
            layers.add(new Layer(entry.text("id"), entry.text("title"), occasions(entry), Set.copyOf(regions(entry)),
                    entry.has("when") ? Optional.of(conditions.read(entry, "when")) : Optional.<Condition>empty(),
                    entry.optionalText("after").map(key -> knownKey(entry, key)),
                    entry.texts("keys").stream().map(key -> knownKey(entry, key)).toList(), untilAsked));
        }
        return layers;
    }

    private static Set<Occasion> occasions(Entry entry) {
        Set<Occasion> occasions = entry.texts("on").stream().map(text -> switch (text) {
            case "full" -> Occasion.FULL;
            case "review" -> Occasion.REVIEW;
            default -> throw entry.problem("'on' must be full or review, but is '" + text + "'");
        }).collect(Collectors.toSet());
        if (occasions.isEmpty()) {
            throw entry.problem("'on' is missing");
        }
        return occasions;
    }

    private List<String> regions(Entry entry) {
        List<String> regions = entry.texts("regions");
        regions.forEach(region -> knownKey(entry, "region:" + region));
        return regions;
    }

    private String knownKey(Entry entry, String key) {
        if (!known.contains(key)) {
            throw entry.problem("there is no question or fact '" + key + "'");
        }
        return key;
    }

    private List<CombinationRule> rules(ConditionReader conditions) {
        Entry file = Content.yaml("red-flags/combinations.yaml");
        Entry themes = file.entry("themes").orElseThrow(() -> file.problem("'themes' is missing"));
        themes.keys().forEach(name -> conditions.theme(name, themes.texts(name).stream().map(key -> knownKey(themes, key)).toList()));
        Entry terms = file.entry("terms").orElseThrow(() -> file.problem("'terms' is missing"));
        terms.keys().forEach(name -> conditions.term(terms, name, conditions.read(terms, name)));
        Set<String> ids = new HashSet<>();
        List<CombinationRule> rules = new ArrayList<>();
        for (Entry entry : file.entries("rules")) {
            if (!ids.add(entry.text("id"))) {
                throw entry.problem("rule '" + entry.text("id") + "' is written twice");
            }
            rules.add(new CombinationRule(entry.text("id"), entry.text("name"), levels(entry, conditions), entry.text("points_to"),
                    entry.text("action"), suspends(entry), entry.text("basis"), entry.text("tag"), Set.copyOf(entry.texts("gives_way_to"))));
        }
        return rules;
    }

    private static List<CombinationRule.Level> levels(Entry rule, ConditionReader conditions) {
        List<CombinationRule.Level> levels = new ArrayList<>();
        Urgency above = null;
        for (Entry entry : rule.entries("levels")) {
            Optional<Urgency> urgency = entry.text("level").equals("advice")
                    ? Optional.empty() : Optional.of(entry.constant("level", Urgency.class));
            if (above != null && urgency.isPresent() && urgency.get().compareTo(above) >= 0) {
                throw entry.problem("levels must stand from the highest to the lowest");
            }
            above = urgency.orElse(above);
            levels.add(new CombinationRule.Level(urgency, conditions.read(entry, "when")));
        }
        if (levels.isEmpty()) {
            throw rule.problem("a rule needs a level");
        }
        return levels;
    }

    private List<PermanentBar> bars(Entry file, Set<String> origins) {
        List<PermanentBar> bars = new ArrayList<>();
        for (Entry entry : file.entries("permanent_bars")) {
            entry.text("source");
            for (String origin : entry.texts("after")) {
                if (!origins.contains(origin)) {
                    throw entry.problem("there is no question or rule '" + origin + "'");
                }
            }
            bars.add(new PermanentBar(entry.text("token"), Set.copyOf(entry.texts("after")), entry.text("words")));
        }
        return bars;
    }
}
