package org.steadwork.outcome;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;

/** What is due on a day by its schedule, and nothing else; single ratings are entered here, forms of several items on their own page. */
@Path("/cases/{id: \\d+}/due")
@RolesAllowed("clinician")
class DuePages {

    @CheckedTemplate(basePath = "outcome", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance due(CaseHead head, OutcomeView view);
    }

    @Inject
    CaseHeads heads;

    @Inject
    OutcomeViews views;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestQuery String on) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        LocalDate today = LocalDate.now(clock);
        return Answers.page(Templates.due(head, views.of(head.file(), ScoreDay.of(on, head.file(), today), today, null)));
    }
}
