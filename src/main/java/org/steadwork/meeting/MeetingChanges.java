package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.PlanChanges;
import org.steadwork.drawing.PlanMark;

/** A decision of a review meeting that was accepted is a change of the plan, on the day of the meeting. */
@ApplicationScoped
class MeetingChanges implements PlanChanges {

    @Inject
    CaseOutcomes outcomes;

    @Override
    public List<PlanMark> of(CaseFile caseFile) {
        return outcomes.decisions(caseFile.id()).stream().filter(one -> one.answer() != null && one.answer().accepted())
                .map(one -> new PlanMark(one.decision().meeting().heldOn(), PlanMark.Kind.OTHER, "Review meeting: " + one.decision().words())).toList();
    }
}
