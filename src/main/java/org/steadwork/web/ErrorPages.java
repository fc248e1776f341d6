package org.steadwork.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** The pages for what went wrong: each says what happened, what was kept and what to do; none shows a stack trace. */
class ErrorPages {

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance error(String title, String lead, String help);
    }

    private static final String RETRY = "Go back, load the page again and try once more. Nothing was changed.";
    private static final Logger LOG = Logger.getLogger(ErrorPages.class);

    @ServerExceptionMapper
    Response notFound(NotFoundException e) {
        return page(404, "Not found", "There is nothing at this address.",
                "The link may be old, or a number in it mistyped. Nothing was changed.");
    }

    @ServerExceptionMapper
    Response forbidden(ForbiddenException e) {
        return page(403, "Not for this account", "Your account may not open this page.",
                "Clinical pages are for clinicians; the lead of the clinic can change what an account may do. Nothing was changed.");
    }

    @ServerExceptionMapper({UnauthorizedException.class, AuthenticationFailedException.class})
    Response signInFirst(UriInfo uri) {
        String back = uri.getPath();
        if (ApiProblem.concerns(back)) {
            return ApiProblem.of(401, "Not signed in", "Sign in first, and send the session cookie along.").answer();
        }
        return Answers.seeOther("/sign-in?to=" + URLEncoder.encode(back, StandardCharsets.UTF_8));
    }

    @ServerExceptionMapper
    Response refused(WebApplicationException e) {
        int status = e.getResponse().getStatus();
        if (status < 400) {
            return e.getResponse();
        }
        if (status >= 500) {
            return broken(e);
        }
        if (status == 404) {
            return notFound(null);
        }
        if (status == 413) {
            return page(413, "Too much at once", "One field of this form holds more than can be taken, or a file is too large.",
                    "Go back, your words are still there; shorten them or part them, and save again. Nothing was changed.");
        }
        return page(status, "Not done", "This request could not be taken as it was sent.", RETRY);
    }

    /** A stored thing that was tampered with: said in words, and loud in the log. */
    @ServerExceptionMapper
    Response broken(BrokenRecordException e) {
        String mark = mark();
        LOG.errorf("%s (%s)", e.what(), mark);
        return page(500, "Not handed out", e.what() + ".", e.help() + " Give the lead of the clinic this mark: " + mark + ".");
    }

    @ServerExceptionMapper
    Response broken(Exception e) {
        if (Collision.in(e)) {
            LOG.infof("A save collided with another: %s", e.getClass().getSimpleName());
            return page(409, "Saved at the same moment", "The same thing was saved twice at one moment, by a double click or by somebody else."
                    + " One save was stored; this one was not.", "Go back, load the page again and look at what is stored.");
        }
        if (Unavailable.concerns(e)) {
            Unavailable.log(e);
            Response answer = page(503, "Not available", "The records cannot be reached at the moment. What was not acknowledged as saved is not stored.",
                    "Keep what you typed, wait a little, and try again. If it lasts, tell the lead of the clinic; the log says more.");
            return Response.fromResponse(answer).header("Retry-After", Unavailable.SECONDS_UNTIL_RETRY).build();
        }
        if (UnreadBody.tooManyFields(e)) {
            return page(413, "Too much at once", "This form holds more fields than can be taken.", RETRY);
        }
        if (UnreadBody.notDecodable(e)) {
            return page(400, "Not readable", "What was sent is not encoded as a form is.", RETRY);
        }
        if (UnreadBody.brokenOff(e)) {
            return page(400, "Broken off", "What was sent broke off before its end.", RETRY);
        }
        String mark = mark();
        LOG.errorf(QuietTrace.of(e), "Unexpected failure %s", mark);
        return page(500, "Something broke", "This is our fault, not yours. What was not acknowledged as saved is not stored.",
                "Try again. If it happens again, give the lead of the clinic this mark: " + mark + ".");
    }

    /** A refusal that comes without a page, such as a missing form token, gets one. */
    @ServerResponseFilter
    void fill(ContainerResponseContext response) {
        if (response.getStatus() >= 400 && !response.hasEntity()) {
            if (concernsApi()) {
                response.setEntity(ApiProblem.of(response.getStatus(), "Not done", "This request could not be taken as it was sent.").answer().getEntity(),
                        null, MediaType.valueOf(ApiProblem.TYPE));
                return;
            }
            response.setEntity(Templates.error("Not done", "This request could not be taken as it was sent.", RETRY).render(), null,
                    MediaType.TEXT_HTML_TYPE.withCharset("utf-8"));
        }
    }

    private static boolean concernsApi() {
        ResteasyReactiveRequestContext running = CurrentRequestManager.get();
        return running != null && ApiProblem.concerns(running.getPath());
    }

    private static String mark() {
        return HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextInt());
    }

    private static Response page(int status, String title, String lead, String help) {
        if (concernsApi()) {
            return ApiProblem.of(status, title, lead).answer();
        }
        return Answers.html(status, Templates.error(title, lead, help));
    }
}
