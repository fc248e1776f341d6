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
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The one-time page on which the first lead makes an account. */
@Path("/first-run")
@PermitAll
class FirstRunPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance firstRun(Form form, String key);
    }

    @Inject
    Accounts accounts;

    @Inject
    SignIns signIns;

    @Inject
    PasswordRules rules;

    @Inject
    SessionCookies cookies;

    @Inject
    FirstRun firstRun;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @GET
    public Response firstRun(@RestQuery String key) {
        if (!firstRun.opens(key)) {
            throw new NotFoundException();
        }
        return Answers.page(Templates.firstRun(Form.empty().with("profession", "Physiotherapist"), key));
    }

    @POST
    @Transactional
    public Response firstRunPosted() {
        Form form = posted.read();
        if (!firstRun.opens(form.value("key"))) {
            throw new NotFoundException();
        }
        AccountForm typed = AccountForm.read(form);
        String password = rules.read(form, typed.userName(), typed.fullName(), typed.displayName());
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.firstRun(form.with("password", "").with("passwordAgain", ""), form.value("key")));
        }
        Account lead = new Account(typed.userName(), typed.fullName(), typed.displayName(), Role.LEAD, Instant.now(clock));
        lead.describeProfession(typed.profession(), typed.registration());
        lead.usePassword(password, passwordCost);
        if (!firstRun.used(form.value("key"))) {
            throw new NotFoundException();
        }
        accounts.persistAndFlush(lead);
        audit.record("made the first account", null, null, lead.userName());
        SignIns.Begun begun = signIns.begin(lead.id(), password, null);
        return Response.fromResponse(Answers.seeOther(begun.awaiting() == null ? "/" : "/sign-in/enrol")).cookie(cookies.of(begun.token())).build();
    }
}
