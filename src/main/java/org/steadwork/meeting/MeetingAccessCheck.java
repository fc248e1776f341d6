package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;

/** Stands before every address of a review meeting, so that no page can forget to ask who takes part. */
class MeetingAccessCheck {

    private static final Pattern MEETING = Pattern.compile("/?meetings/(?:(\\d{1,18})(/.*)?|new)");
    private static final Pattern WHO_TAKES_PART = Pattern.compile("/edit(?:/.*)?");

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance outside(boolean planning);
    }

    @Inject
    SecurityIdentity identity;

    @Inject
    MeetingAccess access;

    @Inject
    AuditTrail audit;

    @ServerRequestFilter
    public Response check(ContainerRequestContext request) {
        Matcher path = MEETING.matcher(request.getUriInfo().getPath());
        if (identity.isAnonymous() || !identity.hasRole("clinician") || !path.matches()) {
            return null;
        }
        boolean planning = path.group(1) == null || path.group(2) != null && WHO_TAKES_PART.matcher(path.group(2)).matches();
        if (planning ? access.plans() : access.opens(Long.parseLong(path.group(1)))) {
            return null;
        }
        audit.record("was refused a review meeting", null, null, planning ? "the lead says who takes part" : "does not take part in it");
        return Response.fromResponse(Answers.page(Templates.outside(planning))).status(403).build();
    }
}
