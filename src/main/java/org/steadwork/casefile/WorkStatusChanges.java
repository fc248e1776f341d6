package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.drawing.PlanMark;

/** Each new work status is a change of the plan. */
@ApplicationScoped
class WorkStatusChanges implements PlanChanges {

    @Inject
    WorkStatuses statuses;

    // a status that is recorded again as it was is no change
    @Override
    public List<PlanMark> of(CaseFile caseFile) {
        List<PlanMark> marks = new ArrayList<>();
        String before = "";
        for (WorkStatus status : statuses.of(caseFile.id()).spells()) {
            String words = status.code().label() + (status.details().isEmpty() ? "" : ", " + status.details());
            if (!words.equals(before)) {
                marks.add(new PlanMark(status.from(), PlanMark.Kind.WORK_STATUS, words));
            }
            before = words;
        }
        return marks;
    }
}
