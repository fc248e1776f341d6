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
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Changing one's own password. It ends every other session and renews this one. */
@Path("/account/password")
@RolesAllowed("staff")
class OwnPasswordPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance ownPassword(Form form, String userName);
    }

    @Inject
    CurrentAccount current;

    @Inject
    PasswordAsked asked;

    @Inject
    PasswordRules rules;

    @Inject
    SignIns signIns;

    @Inject
    SessionCookies cookies;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @GET
    public Response password() {
        return Answers.page(Templates.ownPassword(Form.empty(), current.get().userName()));
    }

    @POST
    @Transactional
    public Response passwordPosted() {
        Form form = posted.read();
        Account account = current.get();
        asked.check(form, "present", account);
        String password = rules.read(form, account.userName(), account.fullName(), account.displayName());
        if (!form.hasErrors() && account.hasPassword(password)) {
            form.error("password", "This is your present password. Choose another.");
        }
        form.with("present", "").with("password", "").with("passwordAgain", "");
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.ownPassword(form, account.userName()));
        }
        account.usePassword(password, passwordCost);
        audit.record("changed their password", null, null, null);
        return Response.fromResponse(Answers.seeOther("/account?after=password")).cookie(cookies.of(signIns.renew(account))).build();
    }
}
