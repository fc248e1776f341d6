package org.steadwork.workplace;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;

/** Two assessments of a case side by side. */
@Path("/cases/{id: \\d+}/work-place/compare")
@RolesAllowed("clinician")
class ComparisonPages {

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    Comparisons comparisons;

    /** Compares the two asked for, or the first with the latest; in order of their days, whichever way they were asked for. */
    @GET
    public Response compare(@RestPath long id, @RestQuery Long from, @RestQuery Long to) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        List<RecordedWorkplace> all = assessments.allRecorded(id);
        if (all.size() < 2) {
            return Answers.page(WorkplacePages.Templates.compare(head, null));
        }
        int one = from == null ? all.size() - 1 : index(all, from);
        int other = to == null ? 0 : index(all, to);
        return Answers.page(WorkplacePages.Templates.compare(head, comparisons.of(all.get(Math.max(one, other)), all.get(Math.min(one, other)),
                all.stream().map(RecordedWorkplace::assessment).toList())));
    }

    private static int index(List<RecordedWorkplace> all, long assessment) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).assessment().id() == assessment) {
                return i;
            }
        }
        throw new NotFoundException();
    }
}
