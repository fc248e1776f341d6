package org.steadwork.exposure;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;

/** The exposure results of a case over time. */
@Path("/cases/{id: \\d+}/exposure")
@RolesAllowed("clinician")
class ExposurePages {

    @CheckedTemplate(basePath = "exposure", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance exposure(CaseHead head, ExposureView.Overview view);
    }

    @Inject
    CaseHeads heads;

    @Inject
    ExposureRecords records;

    @Inject
    ExposureMethods methods;

    @GET
    public Response list(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        return Answers.page(Templates.exposure(head, ExposureView.Overview.of(records.of(id), methods.all())));
    }
}
