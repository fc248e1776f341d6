package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Setting a password through a one-time link. The second factor, where there is one, is asked for at the sign-in that follows. */
@Path("/sign-in/link/{signInToken}")
@PermitAll
class SignInLinkPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signInLink(Form form, String token, String fullName, String userName);
    }

    @Inject
    SignInLinks links;

    @Inject
    Sessions sessions;

    @Inject
    PasswordRules rules;

    @Inject
    SessionCookies cookies;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @GET
    @Transactional
    public Response open(@RestPath String signInToken) {
        Account account = links.opening(signInToken).orElseThrow(NotFoundException::new).account();
        return Answers.page(Templates.signInLink(Form.empty(), signInToken, account.fullName(), account.userName()));
    }

    @POST
    @Transactional
    public Response openPosted(@RestPath String signInToken) {
        SignInLink link = links.forUse(signInToken).orElseThrow(NotFoundException::new);
        Account account = link.account();
        Form form = posted.read();
        String password = rules.read(form, account.userName(), account.fullName(), account.displayName());
        form.with("password", "").with("passwordAgain", "");
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.signInLink(form, signInToken, account.fullName(), account.userName()));
        }
        account.usePassword(password, passwordCost);
        link.use(Instant.now(clock));
        sessions.endAll(account.id(), null);
        audit.recordBy(account, "set a password through a one-time link", null);
        return Response.fromResponse(Answers.seeOther("/sign-in?after=password")).cookie(cookies.ended()).build();
    }
}
