package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.PostedForm;

/** One's own account: who one is here, where one is signed in, and the ways to password and codes. */
@Path("/account")
@RolesAllowed("staff")
class OwnAccountPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance ownAccount(Account account, List<SignInSession> sessions, long here, long codesLeft, int idleMinutes,
                int longestHours, String said);
    }

    @Inject
    CurrentAccount current;

    @Inject
    Sessions sessions;

    @Inject
    SecondFactors factors;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @ConfigProperty(name = "steadwork.session.idle-minutes")
    int idleMinutes;

    @ConfigProperty(name = "steadwork.session.longest-hours")
    int longestHours;

    @GET
    public Response own(@RestQuery String after) {
        Account account = current.get();
        String said = after == null ? null : switch (after) {
            case "password" -> "Your password is changed. Every other session was ended.";
            case "codes-off" -> "One-time codes are off. Every other session was ended.";
            case "ended" -> "The session was ended.";
            case "ended-others" -> "Every other session was ended.";
            default -> null;
        };
        return Answers.page(Templates.ownAccount(account, sessions.of(account.id()), current.sessionId(),
                account.usesCodes() ? factors.recoveryCodesLeft(account) : 0, idleMinutes, longestHours, said));
    }

    /** Ends one of one's own sessions, or with {@code session} = {@code others} all but this one. */
    @POST
    @Path("/sessions/end")
    @Transactional
    public Response end() {
        String which = posted.read().value("session");
        boolean others = which.equals("others");
        if (others) {
            int ended = sessions.endAll(current.id(), current.sessionId());
            audit.record("ended sessions", null, null, ended + " of their own");
        } else if (which.matches("\\d{1,18}") && sessions.end(current.id(), Long.parseLong(which))) {
            audit.record("ended sessions", null, null, "one of their own");
        }
        return Answers.seeOther(others ? "/account?after=ended-others" : "/account?after=ended");
    }
}
