package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.SignInSession.Awaiting;
import org.steadwork.account.SignInSession.FirstStep;
import org.steadwork.account.password.PasswordHash;

/** Signing in: the password or the clinic's provider, then, where the account has one, the second factor, then the session. */
@ApplicationScoped
class SignIns {

    /** @param awaiting what is still asked for, null when the session is open */
    record Begun(String token, Awaiting awaiting) {

        /** Returns where it goes on: to the page that asks for what is awaited, else to {@code to}. */
        String next(String to) {
            return awaiting == null ? to : WayOn.with(switch (awaiting) {
                case CODE -> "/sign-in/code";
                case ENROLMENT -> "/sign-in/enrol";
            }, to);
        }
    }

    @Inject
    Accounts accounts;

    @Inject
    Sessions sessions;

    @Inject
    SecondFactors factors;

    @Inject
    SignInThrottle throttle;

    @Inject
    RequestOrigin origin;

    @Inject
    AuditTrail audit;

    @ConfigProperty(name = "steadwork.password-cost")
    int passwordCost;

    private volatile String nobodysHash;

    /** Returns the account when name and password are right; a name that nobody has takes as long to refuse as one that somebody has. */
    Optional<Account> check(String userName, String password) {
        Optional<Account> account = accounts.named(userName);
        String hash = account.filter(Account::active).map(Account::passwordHash).orElseGet(this::nobodysHash);
        boolean right = PasswordHash.matches(password, hash);
        return right ? account.filter(one -> one.active() && !one.withoutPassword()) : Optional.empty();
    }

    /** Notes a refused try. The name typed is not kept: it may be a password. */
    @Transactional
    void refused(String userName) {
        accounts.named(userName).ifPresentOrElse(account -> audit.recordRefusal(account, "refused a sign-in", "wrong password, or account out of use"),
                () -> audit.record("refused a sign-in", null, null, "no account of the name typed"));
    }

    /** Begins the session of an account whose password was right; one that the browser had before ends. */
    @Transactional
    Begun begin(long accountId, String password, String earlierToken) {
        Account account = accounts.findById(accountId);
        if (PasswordHash.outdated(account.passwordHash(), passwordCost)) {
            account.usePassword(password, passwordCost);
        }
        return begun(account, FirstStep.PASSWORD, false, earlierToken);
    }

    /**
     * Begins the session of an account whose person the clinic's provider has signed in.
     *
     * @param factorGiven whether the provider says that it asked for a second factor; it is then not asked for again here
     */
    @Transactional
    Begun beginThroughProvider(Account account, boolean factorGiven, String earlierToken) {
        return begun(account, FirstStep.OPENID, factorGiven, earlierToken);
    }

    private Begun begun(Account account, FirstStep firstStep, boolean factorGiven, String earlierToken) {
        endEarlier(earlierToken);
        Awaiting awaiting = factorGiven ? null : account.usesCodes() ? Awaiting.CODE : factors.required() ? Awaiting.ENROLMENT : null;
        if (awaiting == null) {
            return new Begun(opened(account, firstStep.words() + (factorGiven ? ", with a second factor there" : "")), null);
        }
        return new Begun(sessions.begin(account, firstStep, awaiting), awaiting);
    }

    /** Opens the session of an account that has given all it must; {@code waiting} is the half-open one before it, {@code second} what was given now. */
    String complete(SignInSession waiting, String second) {
        sessions.end(waiting.account().id(), waiting.id());
        return opened(waiting.account(), waiting.firstStep().words() + " and " + second);
    }

    /** Begins another session for who is signed in, as after a change of password, and ends all others. */
    String renew(Account account) {
        sessions.endAll(account.id(), null);
        return sessions.begin(account);
    }

    private String opened(Account account, String how) {
        throttle.succeeded(account, origin.address());
        audit.recordBy(account, "signed in", how);
        return sessions.begin(account);
    }

    private void endEarlier(String token) {
        if (token != null) {
            sessions.end(token);
        }
    }

    private String nobodysHash() {
        if (nobodysHash == null) {
            nobodysHash = PasswordHash.of(OpaqueToken.fresh(), passwordCost);
        }
        return nobodysHash;
    }
}
