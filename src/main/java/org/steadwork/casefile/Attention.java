package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Tells what in the open cases needs somebody; each feature that can tell is one bean of this type. Words, thresholds and urgency of its
 * entries are rules of the content ({@code shared/worklist/rules.yaml}); the bean finds the cases that meet them. It answers in a
 * fixed number of queries, however many cases are asked about.
 */
public interface Attention {

    /** How soon, in the order of Today: what is dangerous, what is due today or overdue, what should be done soon. */
    enum Urgency {
        NOW, TODAY, SOON
    }

    /**
     * One entry of Today: a rule that a case meets, with the figures by which it does.
     *
     * @param subject what in the case it is about, so that the same thing stays the same entry: the number of a visit, the day of a score;
     *     blank where a case has at most one entry of the rule
     * @param since the day from which it stands open; the oldest comes first within an urgency
     * @param href where its one action is done
     * @param level how bad it is among entries of its rule; when it rises, a snoozed entry comes back at once
     * @param facts a value for every fact that the rule declares
     */
    record Entry(AttentionRule rule, long caseId, String patient, String subject, LocalDate since, String href, int level, Map<String, String> facts) {

        public Entry {
            if (!facts.keySet().equals(rule.facts().keySet())) {
                throw new IllegalArgumentException("The rule " + rule.key() + " declares the facts " + rule.facts().keySet() + ", but got " + facts.keySet());
            }
            facts = Map.copyOf(facts);
        }

        public Entry at(int badness) {
            return new Entry(rule, caseId, patient, subject, since, href, badness, facts);
        }

        public Urgency urgency() {
            return rule.urgency();
        }

        /** How soon or what kind, in a word or two: Same day, Unsigned, Worse. */
        public String label() {
            return rule.fill(rule.words().label(), facts);
        }

        /** Why it is here, in words. */
        public String reason() {
            return rule.fill(rule.words().reason(), facts);
        }

        /** The one action that clears it, as a verb with its object. */
        public String action() {
            return rule.words().action();
        }

        /** The shape beside the label, a modifier of the status class. */
        public String mark() {
            return rule.mark();
        }
    }

    /** Returns the keys of the rules that this bean applies; each rule of the content is applied by one bean. */
    Set<String> rules();

    /** Returns the entries of the cases in scope. */
    List<Entry> entries(LocalDate today, CaseScope scope);
}
