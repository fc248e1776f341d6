package org.steadwork.exercise;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.SuspensionRule;

/** Reads which exercises each suspension holds back. */
final class SuspensionRules {

    private SuspensionRules() {
    }

    static Map<String, SuspensionRule> read(Map<String, Exercise> exercises, Map<String, Exercise.Kind> kinds) {
        Entry file = Content.yaml("exercises/suspensions.yaml");
        file.text("source");
        Map<String, SuspensionRule> rules = new HashMap<>();
        for (Entry entry : file.entries("tokens")) {
            SuspensionRule rule = new SuspensionRule(entry.text("token"), entry.text("words"), matches(entry.entries("blocks"), exercises, kinds),
                    matches(entry.entries("limits"), exercises, kinds));
            if (rules.put(rule.token(), rule) != null) {
                throw entry.problem("token '" + rule.token() + "' stands twice");
            }
        }
        return rules;
    }

    private static List<SuspensionRule.Match> matches(List<Entry> entries, Map<String, Exercise> exercises, Map<String, Exercise.Kind> kinds) {
        return entries.stream().map(entry -> match(entry, exercises, kinds)).toList();
    }

    private static SuspensionRule.Match match(Entry entry, Map<String, Exercise> exercises, Map<String, Exercise.Kind> kinds) {
        Set<BodyRegion> regions = new LinkedHashSet<>();
        entry.texts("regions").forEach(region -> regions.add(BodyRegion.of(region)));
        for (String key : entry.texts("keys")) {
            if (!exercises.containsKey(key)) {
                throw entry.problem("there is no exercise '" + key + "'");
            }
        }
        for (String kind : entry.texts("types")) {
            if (!kinds.containsKey(kind)) {
                throw entry.problem("there is no type '" + kind + "'");
            }
        }
        try {
            return new SuspensionRule.Match(entry.flag("everything"), entry.flag("own_region"), Set.copyOf(entry.texts("types")), regions,
                    Set.copyOf(entry.texts("keys")), entry.optionalText("position").orElse(""), entry.optionalText("note").orElse(""));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }
}
