package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.drawing.PlanMark;

/** Each new work status is a change of the plan. */
@ApplicationScoped
class WorkStatusChanges implements PlanChanges {

    @Inject
    WorkStatuses statuses;

    @Override
    public List<PlanMark> of(CaseFile caseFile) {
        return statuses.of(caseFile.id()).spells().stream().map(status -> new PlanMark(status.from(), PlanMark.Kind.WORK_STATUS,
                status.code().label() + (status.details().isEmpty() ? "" : ", " + status.details()))).toList();
    }
}
