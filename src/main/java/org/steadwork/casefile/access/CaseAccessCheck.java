package org.steadwork.casefile.access;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;

/** Stands before every address of a case, so that no page can forget to ask: who is not in its care team is shown the way to open it with a reason. */
class CaseAccessCheck {

    private static final Pattern CASE = Pattern.compile("/?cases/(\\d{1,18})(/.*)?");
    private static final String BREAK_GLASS = "/break-glass";

    @Inject
    SecurityIdentity identity;

    @Inject
    CaseAccess access;

    @Inject
    CaseFiles cases;

    @Inject
    AuditTrail audit;

    @ServerRequestFilter
    public Response check(ContainerRequestContext request) {
        Matcher path = CASE.matcher(request.getUriInfo().getPath());
        if (!path.matches() || BREAK_GLASS.equals(path.group(2)) || identity.isAnonymous() || access.opens(Long.parseLong(path.group(1)))) {
            return null;
        }
        CaseFile file = cases.withPeople(Long.parseLong(path.group(1))).orElse(null);
        if (file == null) {
            return null; // the page answers that there is no such case
        }
        audit.record("was refused a case", file.patient().id(), file.id(), "outside its care team");
        return BreakGlassPage.refusal(file);
    }
}
