package org.steadwork.meeting;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.microprofile.config.ConfigProvider;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.meeting.agenda.Criteria;
import org.steadwork.meeting.agenda.Criterion;
import org.steadwork.meeting.agenda.Rule;

/** The criteria of the review meeting, read and checked once at the start; a number in the clinic's settings goes before the content's. */
@Startup
@Singleton
class CriteriaContent {

    private static final Set<String> TAGS = Set.of("S", "M", "CP", "P");

    private final Criteria criteria = read(Content.yaml("meeting/criteria.yaml"),
            name -> ConfigProvider.getConfig().getOptionalValue("steadwork.meeting." + name, Integer.class));

    Criteria criteria() {
        return criteria;
    }

    /** @param settings returns the clinic's own number by its name, for example {@code stalled.weeks} */
    static Criteria read(Entry file, Function<String, Optional<Integer>> settings) {
        file.text("source");
        List<Criterion> all = new ArrayList<>();
        Set<Rule> missing = EnumSet.allOf(Rule.class);
        for (Entry entry : file.entries("criteria")) {
            Rule rule = entry.constant("key", Rule.class);
            if (!missing.remove(rule)) {
                throw entry.problem("the key '" + rule.key() + "' is used twice");
            }
            all.add(criterion(entry, rule, settings));
        }
        if (!missing.isEmpty()) {
            throw file.problem("'criteria' must have one entry each for " + missing.stream().map(Rule::key).toList() + " as well");
        }
        return new Criteria(all);
    }

    private static Criterion criterion(Entry entry, Rule rule, Function<String, Optional<Integer>> settings) {
        String tag = entry.text("tag");
        if (!TAGS.contains(tag)) {
            throw entry.problem("'tag' must be one of " + TAGS + ", but is " + tag);
        }
        Map<String, Integer> numbers = new LinkedHashMap<>();
        entry.entry("numbers").ifPresent(written -> written.keys()
                .forEach(name -> numbers.put(name, settings.apply(rule.key() + "." + name).orElseGet(() -> written.integer(name)))));
        try {
            return new Criterion(rule, entry.text("words"), entry.text("explained"), numbers, Set.copyOf(entry.texts("keys")), entry.text("source"), tag);
        } catch (IllegalArgumentException wrong) {
            throw entry.problem(wrong.getMessage());
        }
    }

    /** Says what a tag means, for whoever opens a reason. */
    static String sure(String tag) {
        return switch (tag) {
            case "S" -> "seen in the source";
            case "M" -> "from memory";
            case "CP" -> "common practice";
            default -> "a proposal of ours";
        };
    }
}
