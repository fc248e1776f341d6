package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.web.Answers;

/** The lead's view of the team: who carries what. */
@Path("/team")
@RolesAllowed("lead")
class TeamPages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance team(List<TeamRow> rows, TeamRow total, boolean upToDate);
    }

    @Inject
    Team team;

    @Inject
    Clock clock;

    @GET
    public Response show() {
        LocalDate today = LocalDate.now(clock);
        boolean upToDate = team.upToDate(today);
        List<TeamRow> rows = team.on(today);
        return Answers.page(Templates.team(rows, TeamRow.total(rows), upToDate));
    }
}
