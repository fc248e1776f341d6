package org.steadwork.oversight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.access.AccessRule;
import org.steadwork.casefile.access.BreakGlass;
import org.steadwork.casefile.access.CareTeams;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.web.Answers;

/** The cases that were opened from outside their care team, for a lead to look at. */
@Path("/clinic/break-glass")
@RolesAllowed("lead")
class BreakGlassListPages {

    @CheckedTemplate(basePath = "oversight", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance breakGlassList(List<BreakGlass> open, List<BreakGlass> seen, boolean closed, Instant now);
    }

    private static final int SEEN_SHOWN = 50;

    @Inject
    CareTeams teams;

    @Inject
    CaseAccess access;

    @Inject
    CurrentAccount current;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        return Answers.page(Templates.breakGlassList(teams.notLookedAt(), teams.lookedAt(SEEN_SHOWN), access.rule() == AccessRule.CARE_TEAM,
                Instant.now(clock)));
    }

    @POST
    @Path("/{opening: \\d+}/looked")
    @Transactional
    public Response looked(@RestPath long opening) {
        BreakGlass opened = teams.find(opening);
        if (opened == null) {
            throw new NotFoundException();
        }
        if (opened.lookedAt() == null) {
            opened.look(current.displayName(), Instant.now(clock));
            audit.record("looked at a break-glass opening", opened.caseFile().patient().id(), opened.caseFile().id(), opened.account().userName());
        }
        return Answers.seeOther("/clinic/break-glass");
    }
}
