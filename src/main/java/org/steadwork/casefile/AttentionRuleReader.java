package org.steadwork.casefile;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import org.steadwork.content.Entry;

/** Reads the rules of Today and what a clinic set for itself; a wrong entry stops the start with file, line and reason. */
final class AttentionRuleReader {

    private static final Set<String> RULE = Set.of("key", "name", "label", "reason", "action", "urgency", "mark", "fires", "clears", "facts", "settings", "snooze_days",
            "flag", "lead", "source", "tag");
    private static final Set<String> SETTING = Set.of("key", "words", "unit", "value", "least", "most");
    private static final Set<String> OWN = Set.of("key", "label", "reason", "action", "settings");
    private static final Set<String> MARKS = Set.of("open", "near", "out", "none");
    private static final Set<String> TAGS = Set.of("S", "CP", "P");
    private static final int LONGEST_SNOOZE = 90;
    private static final int LONGEST_LABEL = 40;

    private AttentionRuleReader() {
    }

    static Map<String, AttentionRule> read(Entry file) {
        file.text("source");
        Map<String, AttentionRule> rules = new LinkedHashMap<>();
        for (Entry entry : file.entries("rules")) {
            AttentionRule rule = rule(entry);
            if (rules.put(rule.key(), rule) != null) {
                throw entry.problem("the key '" + rule.key() + "' is used twice");
            }
        }
        if (rules.isEmpty()) {
            throw file.problem("'rules' is missing");
        }
        return rules;
    }

    private static AttentionRule rule(Entry entry) {
        only(entry, RULE);
        AttentionRule.Words words = new AttentionRule.Words(entry.text("label"), entry.text("reason"), entry.text("action"), entry.text("fires"), entry.text("clears"));
        Map<String, AttentionRule.Setting> settings = new LinkedHashMap<>();
        entry.entries("settings").forEach(setting -> settings.put(setting.text("key"), setting(setting)));
        AttentionRule rule = new AttentionRule(entry.text("key"), entry.text("name"), words, entry.constant("urgency", Attention.Urgency.class),
                entry.optionalText("mark").orElse("open"), facts(entry), settings, entry.integer("snooze_days"), entry.flag("flag"), entry.flag("lead"), ground(entry));
        if (!MARKS.contains(rule.mark())) {
            throw entry.problem("'mark' must be one of " + MARKS.stream().sorted().toList() + ", but is '" + rule.mark() + "'");
        }
        if (rule.snoozeDays() < 0 || rule.snoozeDays() > LONGEST_SNOOZE) {
            throw entry.problem("'snooze_days' must lie between 0 and " + LONGEST_SNOOZE + ", but is " + rule.snoozeDays());
        }
        if (rule.urgency() == Attention.Urgency.NOW && rule.snoozable()) {
            throw entry.problem("what is for now cannot be put off: 'snooze_days' must be 0, but is " + rule.snoozeDays());
        }
        if (rule.flag() && rule.snoozeDays() > 1) {
            throw entry.problem("an open flag is put off for the rest of the day at most: 'snooze_days' must be 0 or 1, but is " + rule.snoozeDays());
        }
        requirePlaces(entry, rule);
        return rule;
    }

    private static AttentionRule.Setting setting(Entry entry) {
        only(entry, SETTING);
        int value = entry.integer("value");
        AttentionRule.Setting setting = new AttentionRule.Setting(entry.text("words"), entry.text("unit"), value, value, entry.integer("least"), entry.integer("most"));
        requireRange(entry, setting, value);
        return setting;
    }

    private static void requireRange(Entry entry, AttentionRule.Setting setting, int value) {
        if (value < setting.least() || value > setting.most()) {
            throw entry.problem("'" + setting.words() + "' must lie between " + setting.least() + " and " + setting.most() + ", but is " + value);
        }
    }

    private static Map<String, String> facts(Entry entry) {
        Map<String, String> facts = new LinkedHashMap<>();
        entry.entry("facts").ifPresent(list -> list.keys().forEach(key -> facts.put(key, list.text(key))));
        return facts;
    }

    /** A figure from memory raises no entry by itself, so a rule that has no better ground is refused. */
    private static AttentionRule.Ground ground(Entry entry) {
        String tag = entry.text("tag");
        if (tag.equals("M")) {
            throw entry.problem("a figure from memory (tag M) raises no entry by itself: name a source that was seen, or say CP or P");
        }
        if (!TAGS.contains(tag)) {
            throw entry.problem("'tag' must be one of " + TAGS.stream().sorted().toList() + ", but is '" + tag + "'");
        }
        return new AttentionRule.Ground(entry.text("source"), tag);
    }

    private static void requirePlaces(Entry entry, AttentionRule rule) {
        Set<String> told = new HashSet<>(rule.facts().keySet());
        told.addAll(rule.settings().keySet());
        requirePlaces(entry, "label", rule.words().label(), told);
        requirePlaces(entry, "reason", rule.words().reason(), told);
        requirePlaces(entry, "action", rule.words().action(), Set.of());
        requirePlaces(entry, "fires", rule.words().fires(), rule.settings().keySet());
        if (rule.words().label().length() > LONGEST_LABEL) {
            throw entry.problem("'label' is a word or two, at most " + LONGEST_LABEL + " characters");
        }
    }

    private static void requirePlaces(Entry entry, String key, String pattern, Set<String> known) {
        Matcher place = AttentionRule.place().matcher(pattern);
        while (place.find()) {
            if (!known.contains(place.group(1))) {
                throw entry.problem("'" + key + "' names {" + place.group(1) + "}, which is none of " + known.stream().sorted().toList());
            }
        }
    }

    /** Returns the rules with what a clinic set for itself: words and settings, never urgency, ground or how long an entry may be put off. */
    static Map<String, AttentionRule> changed(Map<String, AttentionRule> shipped, Entry own) {
        only(own, Set.of("rules"));
        Map<String, AttentionRule> rules = new LinkedHashMap<>(shipped);
        Set<String> seen = new HashSet<>();
        for (Entry entry : own.entries("rules")) {
            only(entry, OWN);
            AttentionRule rule = shipped.get(entry.text("key"));
            if (rule == null) {
                throw entry.problem("there is no rule '" + entry.text("key") + "'");
            }
            if (!seen.add(rule.key())) {
                throw entry.problem("the key '" + rule.key() + "' is used twice");
            }
            AttentionRule.Words words = new AttentionRule.Words(entry.optionalText("label").orElse(rule.words().label()),
                    entry.optionalText("reason").orElse(rule.words().reason()), entry.optionalText("action").orElse(rule.words().action()), rule.words().fires(),
                    rule.words().clears());
            AttentionRule changed = new AttentionRule(rule.key(), rule.name(), words, rule.urgency(), rule.mark(), rule.facts(), settings(rule, entry), rule.snoozeDays(),
                    rule.flag(), rule.leadOnly(), rule.ground());
            requirePlaces(entry, changed);
            rules.put(rule.key(), changed);
        }
        return rules;
    }

    private static Map<String, AttentionRule.Setting> settings(AttentionRule rule, Entry entry) {
        Map<String, AttentionRule.Setting> settings = new LinkedHashMap<>(rule.settings());
        entry.entry("settings").ifPresent(own -> {
            for (String key : own.keys()) {
                AttentionRule.Setting setting = settings.get(key);
                if (setting == null) {
                    throw own.problem("the rule '" + rule.key() + "' has no setting '" + key + "', only " + settings.keySet());
                }
                requireRange(own, setting, own.integer(key));
                settings.put(key, setting.with(own.integer(key)));
            }
        });
        return settings;
    }

    private static void only(Entry entry, Set<String> keys) {
        Set<String> unknown = new HashSet<>(entry.keys());
        unknown.removeAll(keys);
        if (!unknown.isEmpty()) {
            throw entry.problem("knows no " + unknown.stream().sorted().toList() + " here, only " + keys.stream().sorted().toList());
        }
    }
}
