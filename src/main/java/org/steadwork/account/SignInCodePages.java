package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.SignInSession.Awaiting;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The second step of signing in: a one-time code, or a recovery code in its place. */
@Path("/sign-in/code")
@PermitAll
class SignInCodePages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signInCode(Form form, String to);
    }

    @Inject
    Sessions sessions;

    @Inject
    SignIns signIns;

    @Inject
    SecondFactors factors;

    @Inject
    SessionCookies cookies;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response code(@RestQuery String to) {
        return waiting().isEmpty() ? Answers.seeOther("/sign-in") : Answers.page(Templates.signInCode(Form.empty(), WayOn.safe(to)));
    }

    @POST
    @Transactional
    public Response codePosted() {
        Form form = posted.read();
        String to = WayOn.safe(form.value("to"));
        Optional<SignInSession> waiting = waiting();
        if (waiting.isEmpty()) {
            return Answers.seeOther(WayOn.with("/sign-in", to));
        }
        Account account = waiting.get().account();
        if (factors.take(account, form.value("code"))) {
            String token = signIns.complete(waiting.get(), "code");
            return Response.fromResponse(Answers.seeOther(to)).cookie(cookies.of(token)).build();
        }
        audit.recordRefusal(account, "refused a sign-in", "wrong one-time code");
        if (!sessions.anotherTry(waiting.get())) {
            return Response.fromResponse(Answers.seeOther(WayOn.with("/sign-in", to))).cookie(cookies.ended()).build();
        }
        form.with("code", "");
        form.error("code", "This code is not right, or was used already. Wait for the next one; the clocks of phone and clinic may differ by half a minute.");
        return Answers.unprocessable(Templates.signInCode(form, to));
    }

    private Optional<SignInSession> waiting() {
        return sessions.waiting(cookies.token(), Awaiting.CODE);
    }
}
