package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Signing in with name and password. */
@Path("/sign-in")
@PermitAll
class SignInPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance signIn(Form form, String to, String said, int idleMinutes, OtherWay otherWay, List<DemoAccount> demoAccounts);
    }

    /** An account of the demo clinic as the sign-in page shows it. */
    public record DemoAccount(String userName, String who, String password) {
    }

    /**
     * The other way of signing in, where the clinic has set one.
     *
     * @param problem what kept somebody who went there from being signed in; may be null
     */
    public record OtherWay(String name, String href, String problem) {
    }

    private static final String WRONG = "The user name or the password is not right.";

    @Inject
    SignIns signIns;

    @Inject
    SignInThrottle throttle;

    @Inject
    SessionCookies cookies;

    @Inject
    RequestOrigin origin;

    @Inject
    Accounts accounts;

    @Inject
    PlainHttpSignIn plainHttp;

    @Inject
    OpenIdProvider provider;

    @Inject
    PostedForm posted;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    @ConfigProperty(name = "steadwork.session.idle-minutes")
    int idleMinutes;

    @GET
    public Response signIn(@RestQuery String to, @RestQuery String after) {
        String said = "password".equals(after) ? "Your new password is set, and all sessions were ended. Sign in with it." : null;
        return Answers.page(page(Form.empty(), WayOn.safe(to), said, OpenIdSaid.words(after, provider.name())));
    }

    @POST
    public Response signInPosted() {
        Form form = posted.read();
        String to = WayOn.safe(form.value("to"));
        String userName = form.value("userName");
        String password = form.value("password");
        form.with("password", "");
        if (plainHttp.refused()) {
            form.error("userName", "This connection is not encrypted, and you are on another machine: your password could be read on the way."
                    + " Open the clinic by its https address.");
            return Answers.unprocessable(page(form, to));
        }
        Duration wait = throttle.take(userName, origin.address());
        if (!wait.isZero()) {
            return tooMany(form, to, wait);
        }
        Optional<Account> account = signIns.check(userName, password);
        if (account.isEmpty()) {
            signIns.refused(userName);
            form.error("userName", WRONG);
            return Answers.unprocessable(page(form, to));
        }
        SignIns.Begun begun = signIns.begin(account.get().id(), password, cookies.token());
        return Response.fromResponse(Answers.seeOther(begun.next(to))).cookie(cookies.of(begun.token())).build();
    }

    private Response tooMany(Form form, String to, Duration wait) {
        long seconds = wait.toSeconds() + 1;
        form.error("userName", "Too many tries. Wait " + (seconds < 120 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes")
                + ", then try again. Nobody is locked out; the lead of the clinic can give you a one-time link.");
        return Response.fromResponse(Answers.unprocessable(page(form, to))).status(429).header("Retry-After", seconds).build();
    }

    private TemplateInstance page(Form form, String to) {
        return page(form, to, null, null);
    }

    private TemplateInstance page(Form form, String to, String said, String problem) {
        OtherWay otherWay = provider.on() ? new OtherWay(provider.name(), WayOn.with(OpenIdTenant.BEGIN, to), problem) : null;
        return Templates.signIn(form, to, said, idleMinutes, otherWay, demoAccounts());
    }

    private List<DemoAccount> demoAccounts() {
        return demo ? accounts.all().stream().filter(a -> !a.withoutPassword()).map(a -> new DemoAccount(a.userName(), a.fullName() + ", " + a.role().label().toLowerCase(),
                DemoPassword.VALUE)).toList() : List.of();
    }
}
