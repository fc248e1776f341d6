package org.steadwork.casemap;

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

/** The map of a case: what hangs together? */
@Path("/cases/{id: \\d+}")
@RolesAllowed("clinician")
class MapPages {

    @CheckedTemplate(basePath = "casemap", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance map(CaseHead head, MapView map);
    }

    @Inject
    CaseHeads heads;

    @Inject
    CaseMaps maps;

    @GET
    public Response map(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.MAP);
        return Answers.page(Templates.map(head, maps.of(head.file())));
    }
}
