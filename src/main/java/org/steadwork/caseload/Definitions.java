package org.steadwork.caseload;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CloseReason;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** What each figure counts, from {@code shared/caseload/definitions.yaml}, with the numbers it is counted by; a wrong entry stops the start. */
@Startup
@Singleton
class Definitions {

    private static final Set<String> TAGS = Set.of("S", "M", "CP", "P");

    /** One definition. {@code tag} says how sure its source is, in the words of {@link #sureness()}. */
    record Definition(String key, String title, String words, String source, String tag) {

        public String sureness() {
            return switch (tag) {
                case "S" -> "seen in the source";
                case "M" -> "from memory";
                case "P" -> "a proposal of ours";
                default -> "common practice";
            };
        }

        /** The source and, where it does not say so itself, how sure it is. */
        public String basis() {
            String said = source.toLowerCase(Locale.ROOT);
            boolean itself = said.contains("common practice") || said.contains("proposal of ours") || said.contains("from memory");
            return itself ? source : source + "; " + sureness();
        }
    }

    /** One quality indicator; {@code target} in words. */
    record Indicator(String key, String title, String words, String target, String source) {
    }

    /** Several regions under one name. */
    record RegionGroup(String key, String title, Set<BodyRegion> regions) {
    }

    private final Map<String, Definition> all = new LinkedHashMap<>();
    private final Map<String, Indicator> indicators = new LinkedHashMap<>();
    private final Map<String, RegionGroup> groups = new LinkedHashMap<>();
    private final Map<String, String> kinds = new LinkedHashMap<>();
    private final Set<CloseReason> discharged = EnumSet.noneOf(CloseReason.class);
    private final Entry rules;
    private final String notKept;

    Definitions() {
        Entry file = Content.yaml("caseload/definitions.yaml");
        rules = file.entry("rules").orElseThrow(() -> file.problem("'rules' is missing"));
        notKept = file.text("not_kept");
        for (Entry entry : file.entries("definitions")) {
            if (!TAGS.contains(entry.text("tag"))) {
                throw entry.problem("'tag' must be one of " + TAGS);
            }
            all.put(entry.text("key"), new Definition(entry.text("key"), entry.text("title"), entry.text("words"), entry.text("source"), entry.text("tag")));
        }
        for (Entry entry : file.entries("indicators")) {
            indicators.put(entry.text("key"), new Indicator(entry.text("key"), entry.text("title"), entry.text("words"), entry.text("target"), entry.text("source")));
        }
        for (Entry entry : file.entries("groups")) {
            groups.put(entry.text("key"), new RegionGroup(entry.text("key"), entry.text("title"),
                    entry.texts("regions").stream().map(key -> region(entry, key)).collect(Collectors.toCollection(() -> EnumSet.noneOf(BodyRegion.class)))));
        }
        for (String reason : rules.texts("discharged_for")) {
            discharged.add(reason(reason));
        }
        Entry named = file.entry("kinds").orElseThrow(() -> file.problem("'kinds' is missing"));
        named.keys().forEach(key -> kinds.put(key, named.text(key)));
        for (String number : List.of("confidence_percent", "fewest_for_a_rate", "fewest_at_risk", "sustained_days", "recurrence_days", "loop_days",
                "in_place_days", "unsigned_hours")) {
            if (rules.integer(number) < 1) {
                throw rules.problem("'" + number + "' must be 1 or more");
            }
        }
    }

    private static BodyRegion region(Entry entry, String key) {
        try {
            return BodyRegion.of(key);
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    private CloseReason reason(String key) {
        try {
            return CloseReason.valueOf(key.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw rules.problem("there is no reason '" + key + "' for closing a case");
        }
    }

    /** Returns a definition; a key that the content does not have stops whoever asks. */
    Definition of(String key) {
        return Optional.ofNullable(all.get(key)).orElseThrow(() -> rules.problem("'" + key + "' is not defined"));
    }

    public List<Definition> all() {
        return List.copyOf(all.values());
    }

    Indicator indicator(String key) {
        return Optional.ofNullable(indicators.get(key)).orElseThrow(() -> rules.problem("indicator '" + key + "' is not defined"));
    }

    public List<Indicator> indicators() {
        return List.copyOf(indicators.values());
    }

    List<RegionGroup> groups() {
        return List.copyOf(groups.values());
    }

    Optional<RegionGroup> group(String key) {
        return Optional.ofNullable(groups.get(key));
    }

    /** Names the kinds of findings, by the group of their criterion. */
    Map<String, String> kinds() {
        return kinds;
    }

    public String notKept() {
        return notKept;
    }

    /** True when a case closed for this reason was discharged. */
    boolean discharge(CloseReason reason) {
        return discharged.contains(reason);
    }

    double confidence() {
        return rules.integer("confidence_percent") / 100.0;
    }

    int fewestForARate() {
        return rules.integer("fewest_for_a_rate");
    }

    int fewestAtRisk() {
        return rules.integer("fewest_at_risk");
    }

    int sustainedDays() {
        return rules.integer("sustained_days");
    }

    int recurrenceDays() {
        return rules.integer("recurrence_days");
    }

    int loopDays() {
        return rules.integer("loop_days");
    }

    int inPlaceDays() {
        return rules.integer("in_place_days");
    }

    int unsignedHours() {
        return rules.integer("unsigned_hours");
    }
}
