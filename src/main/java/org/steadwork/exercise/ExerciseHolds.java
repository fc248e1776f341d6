package org.steadwork.exercise;

import java.util.List;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseFile;

/** What holds exercises back in a case until a clinician deals with it. Each feature that can hold back is one bean of this type. */
public interface ExerciseHolds {

    /**
     * One suspension in force.
     *
     * @param token   name of the suspension, as content has it
     * @param regions regions of what set it; empty when not known, which holds back every region
     * @param reason  in plain words, for the clinician
     */
    record Hold(String token, Set<BodyRegion> regions, String reason) {
    }

    /** The suspensions in force. */
    List<Hold> inForce(long caseId);

    /** The same for the mark beside the page's name on every page of the case; at most one query. */
    default List<Hold> beside(CaseFile file) {
        return inForce(file.id());
    }
}
