package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** One account as the lead keeps it: what it may do, where it is signed in, and help for who is locked out. */
@Path("/clinic/accounts/{account: \\d+}")
@RolesAllowed("lead")
class ClinicAccountPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinicAccount(Account account, Form form, List<Option> roles, List<SignInSession> sessions, boolean own,
                String openId, String said, String refused);
    }

    private static final String LAST_LEAD = "This is the only lead who may sign in. Make somebody else a lead first.";

    @Inject
    Accounts accounts;

    @Inject
    Sessions sessions;

    @Inject
    SignInLinks links;

    @Inject
    SecondFactors factors;

    @Inject
    OpenIdProvider openId;

    @Inject
    CurrentAccount current;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response account(@RestPath long account, @RestQuery String after) {
        Account shown = find(account);
        String said = after == null ? null : switch (after) {
            case "saved" -> "Saved.";
            case "out" -> "The account is out of use and its sessions were ended. What it did stays under its name.";
            case "back" -> "The account may sign in again. Give a one-time link where the password is not known any more.";
            case "ended" -> "Its sessions were ended.";
            case "codes-off" -> "Its one-time codes are off, and its sessions were ended.";
            case "openid-on" -> "It may sign in through " + openId.name() + " from now on.";
            case "openid-off" -> "It signs in by its password alone again, and its sessions were ended.";
            default -> null;
        };
        return Answers.page(page(shown, stored(shown), said, null));
    }

    @POST
    @Transactional
    public Response save(@RestPath long account) {
        Account stored = find(account);
        Form form = posted.read();
        AccountForm typed = AccountForm.readPerson(form, stored.userName());
        Role role = form.requiredChoice("role", "Role", Role.class);
        if (role != null && role != Role.LEAD && lastLead(stored)) {
            form.error("role", LAST_LEAD);
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(stored, form, null, null));
        }
        try {
            stored.requireVersion(form.version());
        } catch (StaleVersionException e) {
            return Answers.conflict(page(stored, form.conflictsWith(stored(stored), stored.version()), null, null));
        }
        boolean otherRole = role != stored.role();
        stored.describe(typed.fullName(), typed.displayName(), role);
        stored.describeProfession(typed.profession(), typed.registration());
        audit.record("changed account", null, null, stored.userName() + ", " + role.label());
        if (otherRole) {
            sessions.endAll(stored.id(), null);
        }
        return Answers.seeOther(otherRole && own(stored) ? "/sign-in" : "/clinic/accounts/" + account + "?after=saved");
    }

    /** Takes the account out of use, or back into it with {@code do} = {@code back}. */
    @POST
    @Path("/use")
    @Transactional
    public Response use(@RestPath long account) {
        Account stored = find(account);
        Form form = posted.read();
        boolean back = form.is("do", "back");
        if (!back && !form.is("do", "out")) {
            return Answers.unprocessable(page(stored, stored(stored), null, "Say whether the account goes out of use or comes back."));
        }
        if (!back && lastLead(stored)) {
            return Answers.unprocessable(page(stored, stored(stored), null, LAST_LEAD));
        }
        stored.activate(back);
        audit.record(back ? "brought account back" : "took account out of use", null, null, stored.userName());
        if (!back) {
            sessions.endAll(stored.id(), null);
            links.revoke(stored);
        }
        return Answers.seeOther("/clinic/accounts/" + account + "?after=" + (back ? "back" : "out"));
    }

    /** Makes a one-time link and shows it, this once. */
    @POST
    @Path("/link")
    @Transactional
    public Response link(@RestPath long account, @Context UriInfo uri) {
        Account stored = find(account);
        if (!posted.read().is("do", "link") || !stored.active()) {
            return Answers.unprocessable(page(stored, stored(stored), null, "A one-time link is made for an account that is in use."));
        }
        audit.record("made a one-time link", null, null, stored.userName());
        return Answers.page(LinkPage.of(stored, links.make(stored, current.displayName()), uri));
    }

    /** Ends one session, or with {@code session} = {@code all} every one. */
    @POST
    @Path("/sessions/end")
    @Transactional
    public Response end(@RestPath long account) {
        Account stored = find(account);
        String which = posted.read().value("session");
        if (which.equals("all")) {
            sessions.endAll(stored.id(), null);
        } else if (!which.matches("\\d{1,18}") || !sessions.end(stored.id(), Long.parseLong(which))) {
            return Answers.unprocessable(page(stored, stored(stored), null, "This session has ended already."));
        }
        audit.record("ended sessions", null, null, (which.equals("all") ? "all of " : "one of ") + stored.userName());
        return Answers.seeOther("/clinic/accounts/" + account + "?after=ended");
    }

    /** Takes the second factor off, for somebody who has lost the phone and the recovery codes. */
    @POST
    @Path("/codes/off")
    @Transactional
    public Response codesOff(@RestPath long account) {
        Account stored = find(account);
        if (!posted.read().is("do", "off") || !stored.usesCodes()) {
            return Answers.unprocessable(page(stored, stored(stored), null, "This account has no one-time codes."));
        }
        factors.drop(stored);
        sessions.endAll(stored.id(), null);
        audit.record("took one-time codes off", null, null, stored.userName());
        return Answers.seeOther("/clinic/accounts/" + account + "?after=codes-off");
    }

    /** Lets the account sign in through the clinic's provider, or with {@code do} = {@code end} not any more. */
    @POST
    @Path("/openid")
    @Transactional
    public Response openId(@RestPath long account) {
        Account stored = find(account);
        Form form = posted.read();
        boolean allow = form.is("do", "allow");
        if (!openId.on() || !allow && !form.is("do", "end")) {
            return Answers.unprocessable(page(stored, stored(stored), null, openId.on() ? "Say whether it may sign in that way."
                    : "No OpenID Connect provider is set for this clinic."));
        }
        if (allow == stored.openIdAllowed()) {
            return Answers.unprocessable(page(stored, stored(stored), null, allow ? "It may sign in that way already." : "It does not sign in that way."));
        }
        stored.allowOpenId(allow);
        audit.record(allow ? "let account sign in through OpenID Connect" : "ended sign-in through OpenID Connect", null, null, stored.userName());
        if (!allow) {
            sessions.endAll(stored.id(), null);
        }
        return Answers.seeOther(!allow && own(stored) ? "/sign-in" : "/clinic/accounts/" + account + "?after=openid-" + (allow ? "on" : "off"));
    }

    private TemplateInstance page(Account account, Form form, String said, String refused) {
        return Templates.clinicAccount(account, form, Option.of(Role.class, Role::label), sessions.of(account.id()), own(account), openId.name(),
                said, refused);
    }

    private boolean own(Account account) {
        return account.id() == current.id();
    }

    private boolean lastLead(Account account) {
        return account.active() && account.role() == Role.LEAD && accounts.leads().size() == 1;
    }

    private Account find(long id) {
        return accounts.findByIdOptional(id).orElseThrow(NotFoundException::new);
    }

    private static Form stored(Account account) {
        return Form.empty().with("fullName", account.fullName()).with("displayName", account.displayName())
                .with("role", account.role().name().toLowerCase(Locale.ROOT)).with("profession", account.profession())
                .with("registration", account.registration()).with("version", account.version());
    }
}
