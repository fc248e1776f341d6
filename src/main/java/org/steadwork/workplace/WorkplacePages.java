package org.steadwork.workplace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The work place of a case: what does not fit, by how much, and what to change first. */
@Path("/cases/{id: \\d+}/work-place")
@RolesAllowed("clinician")
class WorkplacePages {

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance workPlace(CaseHead head, WorkplaceView view);

        static native TemplateInstance workPlaceEdit(CaseHead head, WorkplaceFields fields);

        static native TemplateInstance findingLife(CaseHead head, FindingFields fields);

        static native TemplateInstance writeBack(CaseHead head, WorkplaceAssessment assessment, List<RegisterDifference> found, List<Option> rooms,
                Form form);

        static native TemplateInstance compare(CaseHead head, Comparison view);

        static native TemplateInstance photoNew(CaseHead head, WorkplaceAssessment look, Form form);

        static native TemplateInstance photo(CaseHead head, WorkplacePhoto photo, Form form);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceViews views;

    /** Shows the latest assessment, or an earlier one by its number. */
    @GET
    public Response show(@RestPath long id, @RestQuery Long assessment) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        List<WorkplaceAssessment> looks = assessments.of(id);
        if (looks.isEmpty() && assessment == null) {
            return Answers.page(Templates.workPlace(head, null));
        }
        WorkplaceAssessment shown = looks.stream().filter(look -> assessment == null || look.id().equals(assessment)).findFirst()
                .orElseThrow(NotFoundException::new);
        return Answers.page(Templates.workPlace(head, views.of(shown, looks)));
    }
}
