package org.steadwork.account;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.steadwork.web.Answers;

/** Signing out; a session that has run out already need not sign in for it. */
@Path("/sign-out")
@PermitAll
class SignOutPages {

    @Inject
    Sessions sessions;

    @Inject
    SessionCookies cookies;

    @Inject
    AuditTrail audit;

    @Inject
    SecurityIdentity identity;

    @POST
    @Transactional
    public Response signOut() {
        String token = cookies.token();
        if (token != null) {
            sessions.end(token);
        }
        if (!identity.isAnonymous()) {
            audit.record("signed out", null, null, null);
        }
        return Response.fromResponse(Answers.seeOther("/sign-in")).cookie(cookies.ended()).header("Clear-Site-Data", "\"cache\"").build();
    }
}
