package org.steadwork.redflag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.content.Entry;
import org.steadwork.redflag.rules.Condition;

/** Reads the small rule language of the combination rules: keys, any_of, all_of, count_of, items_inside, same_theme, terms. */
final class ConditionReader {

    private final Set<String> keys;
    private final Map<String, List<String>> ticks;
    private final Map<String, List<String>> themes = new LinkedHashMap<>();
    private final Map<String, Condition> terms = new LinkedHashMap<>();

    /**
     * @param keys every key that a condition may name
     * @param ticks the tick keys of each composite question
     */
    ConditionReader(Set<String> keys, Map<String, List<String>> ticks) {
        this.keys = keys;
        this.ticks = ticks;
    }

    void theme(String name, List<String> members) {
        themes.put(name, members);
    }

    void term(Entry where, String name, Condition condition) {
        if (terms.put(name, condition) != null) {
            throw where.problem("the term '" + name + "' is written twice");
        }
    }

    Condition read(Entry entry, String key) {
        List<Object> parts = entry.parts(key);
        if (parts.size() != 1) {
            throw entry.problem("'" + key + "' must be one condition");
        }
        return condition(entry, parts.get(0));
    }

    private Condition condition(Entry where, Object value) {
        if (value instanceof String text) {
            return key(where, text);
        }
        if (value instanceof Entry entry && entry.keys().size() == 1) {
            return operator(entry, entry.keys().iterator().next());
        }
        throw where.problem("a condition is a key, or a map with one operator");
    }

    private Condition key(Entry where, String text) {
        if (text.startsWith("is:")) {
            Condition term = terms.get(text.substring(3));
            if (term == null) {
                throw where.problem("there is no term '" + text.substring(3) + "' above");
            }
            return term;
        }
        if (!keys.contains(text)) {
            throw where.problem("there is no question, fact, item, region or rule '" + text + "'");
        }
        return new Condition.Key(text);
    }

    private Condition operator(Entry entry, String name) {
        return switch (name) {
            case "any_of" -> Condition.anyOf(list(entry, name));
            case "all_of" -> new Condition.AllOf(list(entry, name));
            case "count_of" -> {
                Entry count = inner(entry, name);
                yield new Condition.CountOf(count.integer("at_least"), list(count, "of"), list(count, "double"));
            }
            case "items_inside" -> inside(inner(entry, name));
            case "same_theme" -> sameTheme(inner(entry, name).integer("at_least"));
            default -> throw entry.problem("there is no operator '" + name + "'");
        };
    }

    private static Entry inner(Entry entry, String name) {
        return entry.entry(name).orElseThrow(() -> entry.problem("'" + name + "' must be a map"));
    }

    private List<Condition> list(Entry entry, String name) {
        List<Condition> parts = new ArrayList<>();
        for (Object part : entry.parts(name)) {
            parts.add(condition(entry, part));
        }
        return parts;
    }

    private Condition inside(Entry entry) {
        String question = entry.text("question");
        List<String> inside = ticks.get(question);
        if (inside == null) {
            throw entry.problem("'" + question + "' has no tick-list");
        }
        return new Condition.CountOf(entry.integer("at_least"), keys(inside), List.of());
    }

    /** Holds when any one theme has so many; a theme with fewer members cannot. */
    private Condition sameTheme(int atLeast) {
        return Condition.anyOf(themes.values().stream().filter(members -> members.size() >= atLeast)
                .<Condition>map(members -> new Condition.CountOf(atLeast, keys(members), List.of())).toList());
    }

    private static List<Condition> keys(List<String> keys) {
        return keys.stream().<Condition>map(Condition.Key::new).toList();
    }
}
