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
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.SignInSession.Awaiting;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Setting up one-time codes on the way in, where the clinic asks them of everybody. */
@Path("/sign-in/enrol")
@PermitAll
class SignInEnrolPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signInEnrol(Form form, String to, CodeOffer offer);
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

    /** Makes the key when the account has none yet; nothing is in force before a code was typed. */
    @GET
    @Transactional
    public Response enrol(@RestQuery String to) {
        Optional<SignInSession> waiting = waiting();
        if (waiting.isEmpty()) {
            return Answers.seeOther("/sign-in");
        }
        Account account = waiting.get().account();
        if (account.codeKey() == null) {
            factors.offer(account);
        }
        return Answers.page(Templates.signInEnrol(Form.empty(), WayOn.safe(to), CodeOffer.of(factors, account)));
    }

    @POST
    @Transactional
    public Response enrolPosted() {
        Form form = posted.read();
        String to = WayOn.safe(form.value("to"));
        Optional<SignInSession> waiting = waiting();
        if (waiting.isEmpty() || waiting.get().account().codeKey() == null) {
            return Answers.seeOther(WayOn.with("/sign-in", to));
        }
        Account account = waiting.get().account();
        List<String> codes = factors.confirm(account, form.value("code"));
        if (codes.isEmpty()) {
            form.error("code", CodeOffer.WRONG);
            return Answers.unprocessable(Templates.signInEnrol(form.with("code", ""), to, CodeOffer.of(factors, account)));
        }
        audit.recordBy(account, "set up one-time codes", null);
        String token = signIns.complete(waiting.get(), "first code");
        return Response.fromResponse(Answers.page(RecoveryCodesPage.of(codes, to))).cookie(cookies.of(token)).build();
    }

    private Optional<SignInSession> waiting() {
        return sessions.waiting(cookies.token(), Awaiting.ENROLMENT);
    }
}
