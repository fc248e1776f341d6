package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;

/** Signing in through the clinic's OpenID Connect provider: the way there, and the way back. Where none is set there is nothing here. */
@Path(OpenIdTenant.BEGIN)
@PermitAll
class OpenIdPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signInThrough(String name, String next);
    }

    private static final String WAY_ON = "steadwork-way-on";

    @Inject
    OpenIdProvider provider;

    @Inject
    OpenIdFlow flow;

    @Inject
    OpenIdSignIns openIds;

    @Inject
    SessionCookies cookies;

    @Inject
    PlainHttpSignIn plainHttp;

    @Inject
    RequestOrigin origin;

    @GET
    public Response begin(@RestQuery String to) {
        onlyWhereSet();
        if (plainHttp.refused()) {
            return said(OpenIdSaid.UNENCRYPTED, WayOn.safe(to));
        }
        URI there = flow.begin();
        if (there == null) {
            return said(OpenIdSaid.AWAY, WayOn.safe(to));
        }
        return Response.seeOther(there).header("Cache-Control", "no-store").cookie(wayOn(WayOn.safe(to), OpenIdTenant.TO_SIGN_IN_THERE.toSeconds())).build();
    }

    /**
     * The provider sends the browser here. Browsers do not send our session cookie along on a way that another site began, so the answer is a
     * page that goes on by itself: from there the way is ours.
     */
    @GET
    @Path("/back")
    public Response back(@RestQuery String error, @RestQuery String code, @CookieParam(WAY_ON) String wayOn) {
        onlyWhereSet();
        String to = WayOn.safe(wayOn);
        if (code == null && error != null) {
            return said(OpenIdSaid.DENIED, to);
        }
        OpenIdFlow.Returned returned = flow.back();
        if (returned.problem() != null) {
            return said(returned.problem() == OpenIdFlow.Problem.AWAY ? OpenIdSaid.AWAY : OpenIdSaid.FAILED, to);
        }
        Optional<SignIns.Begun> begun = openIds.begin(returned.claims(), cookies.token());
        if (begun.isEmpty()) {
            return said(OpenIdSaid.REFUSED, to);
        }
        return Response.fromResponse(Answers.page(Templates.signInThrough(provider.name(), begun.get().next(to))))
                .cookie(cookies.of(begun.get().token()), wayOn("", 0)).build();
    }

    private void onlyWhereSet() {
        if (!provider.on()) {
            throw new NotFoundException();
        }
    }

    private static Response said(OpenIdSaid what, String to) {
        return Answers.seeOther(what.at(to));
    }

    private NewCookie wayOn(String to, long seconds) {
        return new NewCookie.Builder(WAY_ON).value(to).path(OpenIdTenant.BEGIN).httpOnly(true).secure(origin.secure()).sameSite(NewCookie.SameSite.LAX)
                .maxAge((int) seconds).build();
    }
}
