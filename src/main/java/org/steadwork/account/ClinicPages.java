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
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** The lead's page: who may do what, and who did what. */
@Path("/clinic")
@RolesAllowed("lead")
class ClinicPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinic(List<Account> accounts, List<AuditEvent> events);

        static native TemplateInstance accountNew(Form form, List<Option> roles);
    }

    private static final int EVENTS_SHOWN = 100;

    @Inject
    Accounts accounts;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @GET
    public Response clinic() {
        return Answers.page(Templates.clinic(accounts.all(), audit.latest(EVENTS_SHOWN)));
    }

    @GET
    @Path("/accounts/new")
    public Response add() {
        return Answers.page(Templates.accountNew(Form.empty(), roles()));
    }

    @POST
    @Path("/accounts/new")
    @Transactional
    public Response addPosted() {
        Form form = posted.read();
        AccountForm typed = AccountForm.read(form);
        Role role = form.requiredChoice("role", "Role", Role.class);
        if (typed.userName() != null && accounts.named(typed.userName()).isPresent()) {
            form.error("userName", "There is an account with this name already. Choose another.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.accountNew(form.with("password", "").with("passwordAgain", ""), roles()));
        }
        Account account = new Account(typed.userName(), typed.fullName(), typed.displayName(), role, Instant.now(clock));
        account.describeProfession(typed.profession(), typed.registration());
        account.usePassword(typed.password(), passwordCost);
        accounts.persist(account);
        audit.record("made account", null, null, account.userName() + ", " + role.label());
        return Answers.seeOther("/clinic");
    }

    private static List<Option> roles() {
        return Option.of(Role.class, Role::label);
    }
}
