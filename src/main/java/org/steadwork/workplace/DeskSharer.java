package org.steadwork.workplace;

import java.util.List;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.How;

/**
 * Somebody assessed at a desk, with the latest look there.
 *
 * @param mark    letters for the card, of the person's choice; not stored
 * @param moved   whether a later assessment found the same person at another registered desk
 * @param chosen  whether this person is to be counted in
 * @param missing measures of the person without which nothing can be worked out, in words
 */
record DeskSharer(RecordedWorkplace recorded, String mark, boolean moved, boolean chosen, List<String> missing) {

    static final int LONGEST_MARK = 12;

    boolean counted() {
        return chosen && missing.isEmpty();
    }

    Patient patient() {
        return recorded.assessment().caseFile().patient();
    }

    public Long assessment() {
        return recorded.assessment().id();
    }

    public Long caseId() {
        return recorded.assessment().caseFile().id();
    }

    public String name() {
        return patient().name();
    }

    public String on() {
        return Dates.shown(recorded.assessment().assessedOn());
    }

    /** Says what the clinician should know before counting this person in, or null. */
    public String note() {
        if (!missing.isEmpty()) {
            return "Not counted: " + String.join(", ", missing) + " not looked at";
        }
        if (moved) {
            return "Assessed at another desk since";
        }
        return recorded.assessment().caseFile().open() ? null : "Case closed";
    }

    /** Tells whether a measure of the person rests on an estimate. */
    public boolean estimated() {
        return recorded.taken().values().stream().anyMatch(taken -> taken.how() == How.ESTIMATED);
    }
}
