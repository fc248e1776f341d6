package org.steadwork.caseload;

import java.util.Map;
import org.steadwork.body.BodyRegion;

/**
 * What of one person goes into the count for the employer: where the person works and three facts. No name, no number.
 *
 * @param site where the person works, null when not known; {@code department} likewise
 * @param region main region, null when not reported
 * @param findings state of each kind of finding: + when all found of the kind is put right, ! when something of it was asked for and is
 *        not in place, blank when it was found only
 */
record ReportPerson(String site, String department, BodyRegion region, Map<String, Character> findings, Return back) {

    /** What became of an absence. */
    enum Return {
        NOT_OFF("Not off work, or not known"), WITHIN_FOUR_WEEKS("Back within 4 weeks"), WITHIN_TWELVE_WEEKS("Back after 4 to 12 weeks"),
        LATER("Later, or not yet");

        private final String label;

        Return(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    ReportPerson {
        findings = Map.copyOf(findings);
    }
}
