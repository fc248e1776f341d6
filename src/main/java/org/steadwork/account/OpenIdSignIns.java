package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.steadwork.account.openid.Claims;
import org.steadwork.account.openid.MethodsUsed;

/**
 * Which account somebody may use whom the provider has signed in. One account belongs to one person there, named by issuer and subject. The
 * user name counts once, at the first sign-in, and only for an account that a lead has marked for it; an account is never taken over silently.
 */
@ApplicationScoped
class OpenIdSignIns {

    private static final String REFUSED = "refused a sign-in";
    private static final String WAY = "OpenID Connect: ";
    private static final int LONGEST_SUBJECT = 255;
    private static final int LONGEST_ISSUER = 400;
    private static final int LONGEST_FULL_NAME = 120;
    private static final int LONGEST_DISPLAY_NAME = 60;

    @Inject
    OpenIdProvider provider;

    @Inject
    Accounts accounts;

    @Inject
    Sessions sessions;

    @Inject
    SignIns signIns;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    /** Begins the session of the account that the claims of a verified ID token belong to; empty, and noted in the audit trail, when there is none. */
    @Transactional
    Optional<SignIns.Begun> begin(Claims claims, String earlierToken) {
        Optional<Account> account = account(claims);
        return account.map(one -> signIns.beginThroughProvider(one, MethodsUsed.twoFactors(claims), earlierToken));
    }

    private Optional<Account> account(Claims claims) {
        String issuer = claims.text("iss");
        String subject = claims.text("sub");
        if (issuer == null || subject == null || issuer.length() > LONGEST_ISSUER || subject.length() > LONGEST_SUBJECT) {
            return nobody("the provider named nobody");
        }
        boolean mapped = provider.settings().roles() != null;
        Role given = mapped ? provider.settings().roles().roleOf(claims).orElse(null) : null;
        Optional<Account> linked = accounts.linkedTo(issuer, subject);
        if (linked.isPresent()) {
            return known(linked.get(), mapped, given);
        }
        Optional<String> name = userName(claims);
        if (name.isEmpty()) {
            return nobody("no name to know the account by");
        }
        Optional<Account> named = accounts.named(name.get());
        if (named.isPresent()) {
            return firstTime(named.get(), issuer, subject, mapped, given);
        }
        return provider.settings().createAccounts() ? created(claims, name.get(), issuer, subject, given) : nobody("no account of the name given");
    }

    private Optional<Account> known(Account account, boolean mapped, Role given) {
        if (!account.active()) {
            return refused(account, "account out of use");
        }
        if (mapped && given == null) {
            if (account.openIdLinkedAt() != null) { // before, it may be somebody else of this name
                sessions.endAll(account.id(), null);
            }
            return refused(account, "no value that means a role");
        }
        if (mapped && given != account.role()) {
            if (onlyLead(account)) {
                return refused(account, "the provider gives the only lead another role");
            }
            account.describe(account.fullName(), account.displayName(), given);
            sessions.endAll(account.id(), null);
            audit.recordFor(account, "changed account", given.label() + ", as the provider says");
        }
        return Optional.of(account);
    }

    private Optional<Account> firstTime(Account account, String issuer, String subject, boolean mapped, Role given) {
        if (!account.openIdAllowed()) {
            return refused(account, "not marked for it");
        }
        if (account.openIdLinkedAt() != null) {
            return refused(account, "linked to somebody else of this name");
        }
        Optional<Account> taken = known(account, mapped, given);
        taken.ifPresent(one -> {
            one.linkOpenId(issuer, subject, Instant.now(clock));
            audit.recordFor(one, "linked account", "to the person of this name at the OpenID Connect provider");
        });
        return taken;
    }

    private Optional<Account> created(Claims claims, String name, String issuer, String subject, Role given) {
        if (given == null) {
            return nobody("no account of the name given, and no value that means a role");
        }
        if (!AccountForm.userName(name)) {
            return nobody("the name given cannot be a user name");
        }
        String fullName = Optional.ofNullable(claims.text("name")).map(OpenIdSignIns::plain).filter(text -> !text.isEmpty()).orElse(name);
        Account account = new Account(name, cut(fullName, LONGEST_FULL_NAME), cut(fullName, LONGEST_DISPLAY_NAME), given, Instant.now(clock));
        account.allowOpenId(true);
        account.linkOpenId(issuer, subject, Instant.now(clock));
        accounts.persistAndFlush(account);
        audit.recordFor(account, "made account", given.label() + ", as the provider says");
        return Optional.of(account);
    }

    /** The claim that is compared with user names. An address that the provider has not checked could be anybody's. */
    private Optional<String> userName(Claims claims) {
        String claim = provider.settings().nameClaim();
        boolean unchecked = claim.equals("email") && !claims.says("email_verified");
        return unchecked ? Optional.empty() : Optional.ofNullable(claims.text(claim));
    }

    private boolean onlyLead(Account account) {
        return account.role() == Role.LEAD && accounts.leads().size() == 1;
    }

    private Optional<Account> refused(Account account, String why) {
        audit.recordRefusal(account, REFUSED, WAY + why);
        return Optional.empty();
    }

    private Optional<Account> nobody(String why) {
        audit.record(REFUSED, null, null, WAY + why);
        return Optional.empty();
    }

    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").strip();
    }

    private static String cut(String text, int longest) {
        return text.length() > longest ? text.substring(0, longest).strip() : text;
    }
}
