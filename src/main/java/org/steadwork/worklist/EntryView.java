package org.steadwork.worklist;

import java.util.List;
import org.steadwork.casefile.AttentionRule;

/**
 * An entry with the rule it meets and what ever put it off.
 *
 * @param rule null when the content no longer has it
 * @param trail what put it off, the latest first
 */
record EntryView(WorklistEntry entry, AttentionRule rule, List<Snooze> trail) {

    /** A figure of the case by which it meets the rule. */
    record Figure(String words, String value) {
    }

    static EntryView of(WorklistEntry entry, Worklists worklists) {
        return new EntryView(entry, worklists.rule(entry).orElse(null), worklists.snoozes(entry));
    }

    public List<Figure> figures() {
        return rule == null ? List.of() : rule.facts().entrySet().stream().filter(fact -> entry.facts().containsKey(fact.getKey()))
                .map(fact -> new Figure(fact.getValue(), entry.facts().get(fact.getKey()))).toList();
    }

    /** The snooze that holds, or null. */
    public Snooze snooze() {
        return trail.stream().filter(Snooze::open).findFirst().orElse(null);
    }

    public boolean snoozable() {
        return rule != null && rule.snoozable() && entry.stands() && snooze() == null;
    }

    public String soon() {
        return switch (entry.urgency()) {
            case NOW -> "now, before everything else";
            case TODAY -> "today";
            case SOON -> "soon";
        };
    }
}
