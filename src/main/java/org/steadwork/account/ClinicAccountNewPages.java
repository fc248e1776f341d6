package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Making a colleague's account. Nobody chooses another's password: the colleague sets it through a one-time link. */
@Path("/clinic/accounts/new")
@RolesAllowed("lead")
class ClinicAccountNewPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance accountNew(Form form, List<Option> roles);
    }

    @Inject
    Accounts accounts;

    @Inject
    SignInLinks links;

    @Inject
    CurrentAccount current;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response add() {
        return Answers.page(Templates.accountNew(Form.empty(), Option.of(Role.class, Role::label)));
    }

    @POST
    @Transactional
    public Response addPosted(@Context UriInfo uri) {
        Form form = posted.read();
        AccountForm typed = AccountForm.read(form);
        Role role = form.requiredChoice("role", "Role", Role.class);
        if (typed.userName() != null && accounts.named(typed.userName()).isPresent()) {
            form.error("userName", "There is an account with this name already. Choose another.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.accountNew(form, Option.of(Role.class, Role::label)));
        }
        Account account = new Account(typed.userName(), typed.fullName(), typed.displayName(), role, Instant.now(clock));
        account.describeProfession(typed.profession(), typed.registration());
        accounts.persistAndFlush(account);
        audit.record("made account", null, null, account.userName() + ", " + role.label());
        return Answers.page(LinkPage.of(account, links.make(account, current.displayName()), uri));
    }
}
