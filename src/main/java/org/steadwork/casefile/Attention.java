package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.List;

/**
 * Tells what in the open cases needs somebody; each feature that can tell is one bean of this type.
 * A bean answers for all cases in a fixed number of queries.
 */
public interface Attention {

    /** How soon, in the order of Today: what is dangerous, what is due today or overdue, what should be done soon. */
    enum Urgency {
        NOW, TODAY, SOON
    }

    /**
     * One entry of Today.
     *
     * @param label how soon or what kind, in a word or two: Same day, Unsigned, Worse
     * @param since the day from which it stands open; the oldest comes first within an urgency
     * @param reason why it is here, in words
     * @param action the one action that clears it, as a verb with its object
     * @param href where that is done
     * @param mark the shape beside the label, a modifier of the status class: open for what is to do, near for what is late
     *     or a caution, out for a red flag
     */
    record Entry(long caseId, String patient, Urgency urgency, String label, LocalDate since, String reason, String action, String href, String mark) {

        public Entry(long caseId, String patient, Urgency urgency, String label, LocalDate since, String reason, String action, String href) {
            this(caseId, patient, urgency, label, since, reason, action, href, "open");
        }

        public Entry marked(String shape) {
            return new Entry(caseId, patient, urgency, label, since, reason, action, href, shape);
        }
    }

    List<Entry> entries(LocalDate today);
}
