package org.steadwork.exercise;

import java.util.List;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exercise.dayplan.PainRule;

/**
 * When to stop, printed on every sheet.
 *
 * @param ring      reasons to stop and ring the clinic
 * @param emergency reasons to stop and get emergency help
 * @param pregnancy further reasons in pregnancy
 */
public record StopRules(String wording, List<String> ring, List<String> emergency, List<String> pregnancy, PainRule pain) {

    public String ringWords() {
        return String.join("; ", ring);
    }

    public String emergencyWords() {
        return String.join("; ", emergency);
    }

    static StopRules read() {
        Entry file = Content.yaml("exercises/stop-rules.yaml");
        Entry global = file.entry("global").orElseThrow(() -> file.problem("'global' is missing"));
        Entry pain = file.entry("pain").orElseThrow(() -> file.problem("'pain' is missing"));
        global.text("source");
        pain.text("source");
        try {
            return new StopRules(global.text("wording"), some(global, "ring"), some(global, "emergency"), some(global, "pregnancy"),
                    new PainRule(pain.integer("safe_up_to"), pain.integer("acceptable_up_to")));
        } catch (IllegalArgumentException e) {
            throw pain.problem(e.getMessage());
        }
    }

    private static List<String> some(Entry entry, String key) {
        List<String> texts = entry.texts(key);
        if (texts.isEmpty()) {
            throw entry.problem("'" + key + "' has no rule");
        }
        return texts;
    }
}
