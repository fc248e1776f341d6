package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;

class AttentionRuleReaderTest {

    private static final String RULE = """
            source: test
            rules:
              - key: late
                name: Late
                label: Late
                reason: "Due on {due}, more than {days}."
                action: Do it
                urgency: today
                snooze_days: 3
                facts: {due: Due on}
                settings:
                  - {key: days, words: Days, unit: days, value: 7, least: 1, most: 30}
                fires: "More than {days} late."
                clears: Doing it.
                source: common practice, no source
                tag: CP
            """;

    private static Map<String, AttentionRule> read(String yaml) {
        return AttentionRuleReader.read(Content.yaml("rules.yaml", new StringReader(yaml)));
    }

    private static String refused(String from, String to) {
        assertTrue(RULE.contains(from), from);
        return assertThrows(ContentException.class, () -> read(RULE.replace(from, to))).getMessage();
    }

    @Test
    void wordsAreFilledWithFactsAndSettings() {
        AttentionRule rule = read(RULE).get("late");
        Attention.Entry entry = new Attention.Entry(rule, 1, "A", "", LocalDate.EPOCH, "/", 0, Map.of("due", "1 May $1"));
        assertEquals("Due on 1 May $1, more than 7\u00a0days.", entry.reason());
        assertEquals("More than 7\u00a0days late.", rule.fires());
        assertThrows(IllegalArgumentException.class, () -> new Attention.Entry(rule, 1, "A", "", LocalDate.EPOCH, "/", 0, Map.of()));
    }

    @Test
    void aWrongEntryNamesFileLineAndReason() {
        assertEquals("rules.yaml, line 3: 'reason' names {dew}, which is none of [days, due]", refused("{due},", "{dew},"));
        assertTrue(refused("tag: CP", "tag: M").contains("from memory (tag M) raises no entry by itself"));
        assertTrue(refused("urgency: today", "urgency: now").contains("what is for now cannot be put off"));
        assertTrue(refused("snooze_days: 3", "snooze_days: 3\n    flag: yes").contains("for the rest of the day at most"));
        assertTrue(refused("value: 7", "value: 31").startsWith("rules.yaml, line 12: 'Days' must lie between 1 and 30, but is 31"));
        assertTrue(refused("clears: Doing it.", "cleared: Doing it.").contains("knows no [cleared] here"));
        assertTrue(refused("fires: \"More than {days}", "fires: \"More than {due}").contains("'fires' names {due}"));
        assertTrue(refused("snooze_days: 3", "snooze_days: 3\n    mark: red").contains("'mark' must be one of"));
    }

    @Test
    void aClinicSetsPeriodsAndWordsWithinTheirBoundsAndNothingElse() {
        Map<String, AttentionRule> shipped = read(RULE);
        AttentionRule own = own(shipped, "rules:\n  - key: late\n    label: Tardy\n    settings: {days: 10}\n").get("late");
        assertEquals("Tardy", own.words().label());
        assertEquals(10, own.setting("days"));
        assertTrue(own.settings().get("days").own());
        assertFalse(shipped.get("late").settings().get("days").own());
        assertTrue(refusedOwn(shipped, "rules:\n  - key: late\n    settings: {days: 31}\n").startsWith("own.yaml, line 3: 'Days' must lie between 1 and 30"));
        assertTrue(refusedOwn(shipped, "rules:\n  - key: lat\n").contains("there is no rule 'lat'"));
        assertTrue(refusedOwn(shipped, "rules:\n  - key: late\n    snooze_days: 90\n").contains("knows no [snooze_days] here"));
        assertTrue(refusedOwn(shipped, "rules:\n  - key: late\n    reason: \"{nothing}\"\n").contains("names {nothing}"));
    }

    private static Map<String, AttentionRule> own(Map<String, AttentionRule> shipped, String yaml) {
        return AttentionRuleReader.changed(shipped, Content.yaml("own.yaml", new StringReader(yaml)));
    }

    private static String refusedOwn(Map<String, AttentionRule> shipped, String yaml) {
        return assertThrows(ContentException.class, () -> own(shipped, yaml)).getMessage();
    }
}
