package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Signing in and out, and the one-time page on which the first lead makes an account. */
@Path("/")
@PermitAll
class AccountPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signIn(Form form, String to, List<DemoAccount> demoAccounts);

        static native TemplateInstance firstRun(Form form, String key);
    }

    /** An account of the demo clinic as the sign-in page shows it. */
    public record DemoAccount(String userName, String who, String password) {
    }

    /** Compared against when no such account exists, so that the answer takes as long as a real one. */
    private static final String WRONG = "The user name or the password is not right.";

    @Inject
    Accounts accounts;

    @Inject
    Sessions sessions;

    @Inject
    FirstRun firstRun;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    SecurityIdentity identity;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    @ConfigProperty(name = "steadwork.session.longest-hours")
    int longestHours;

    @GET
    @Path("sign-in")
    public Response signIn(@RestQuery String to) {
        return Answers.page(Templates.signIn(Form.empty(), safe(to), demoAccounts()));
    }

    @POST
    @Path("sign-in")
    @Transactional
    public Response signInPosted() {
        Form form = posted.read();
        String to = safe(form.value("to"));
        Optional<Account> account = accounts.named(form.value("userName")).filter(Account::active);
        boolean right = account.isPresent() ? account.get().hasPassword(form.value("password")) : wastedEffort(form.value("password"));
        if (!right) {
            form.with("password", "");
            form.error("userName", WRONG);
            return Answers.unprocessable(Templates.signIn(form, to, demoAccounts()));
        }
        String token = sessions.begin(account.get());
        audit.record("signed in", null, null, account.get().displayName());
        return Response.fromResponse(Answers.seeOther(to)).cookie(cookie(token, longestHours * 3600)).build();
    }

    @POST
    @Path("sign-out")
    @Transactional
    public Response signOut(@CookieParam(SessionMechanism.COOKIE) String token) {
        if (token != null && !token.isBlank()) {
            sessions.end(token);
        }
        return Response.fromResponse(Answers.seeOther("/sign-in")).cookie(cookie("", 0)).build();
    }

    @GET
    @Path("first-run")
    public Response firstRun(@RestQuery String key) {
        if (!firstRun.opens(key)) {
            throw new NotFoundException();
        }
        return Answers.page(Templates.firstRun(Form.empty().with("profession", "Physiotherapist"), key));
    }

    @POST
    @Path("first-run")
    @Transactional
    public Response firstRunPosted() {
        Form form = posted.read();
        if (!firstRun.opens(form.value("key"))) {
            throw new NotFoundException();
        }
        AccountForm typed = AccountForm.read(form);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.firstRun(form.with("password", "").with("passwordAgain", ""), form.value("key")));
        }
        Account lead = new Account(typed.userName(), typed.fullName(), typed.displayName(), Role.LEAD, Instant.now(clock));
        lead.describeProfession(typed.profession(), typed.registration());
        lead.usePassword(typed.password(), passwordCost);
        accounts.persistAndFlush(lead);
        firstRun.used();
        audit.record("made the first account", null, null, lead.userName());
        return Response.fromResponse(Answers.seeOther("/")).cookie(cookie(sessions.begin(lead), longestHours * 3600)).build();
    }

    private List<DemoAccount> demoAccounts() {
        return demo ? accounts.all().stream().map(a -> new DemoAccount(a.userName(), a.fullName() + ", " + a.role().label().toLowerCase(),
                DemoPassword.VALUE)).toList() : List.of();
    }

    private boolean wastedEffort(String password) {
        Account nobody = new Account("nobody", "", "", Role.ASSISTANT, Instant.now(clock));
        nobody.usePassword(password, passwordCost);
        return false;
    }

    /** Only a path of our own may follow a sign-in. */
    private static String safe(String to) {
        return to != null && to.matches("/[A-Za-z0-9][A-Za-z0-9/._-]*") && !to.startsWith("/sign-") ? to : "/";
    }

    private NewCookie cookie(String token, int maxAge) {
        return new NewCookie.Builder(SessionMechanism.COOKIE).value(token).path("/").httpOnly(true)
                .sameSite(NewCookie.SameSite.STRICT).maxAge(maxAge).build();
    }
}
