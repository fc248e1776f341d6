package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;

/** Why an entry is on Today: the rule, its thresholds, the figures of the case, and where the rule comes from. */
@Path("/today/entries/{entry: \\d+}")
@RolesAllowed("clinician")
class EntryPages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance entryWhy(EntryView view);
    }

    @Inject
    Worklists worklists;

    @Inject
    AuditTrail audit;

    @GET
    public Response why(@RestPath long entry) {
        WorklistEntry found = worklists.find(entry).orElseThrow(NotFoundException::new);
        audit.record("viewed why on Today", found.caseFile().patient().id(), found.caseFile().id(), "entry " + entry);
        return Answers.page(Templates.entryWhy(EntryView.of(found, worklists)));
    }
}
