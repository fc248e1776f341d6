package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import org.steadwork.web.Form;

/** Asks who is signed in for the password again, before something that a stolen session must not do; guesses are slowed down as at sign-in. */
@ApplicationScoped
class PasswordAsked {

    @Inject
    SignInThrottle throttle;

    @Inject
    RequestOrigin origin;

    /** Notes an error at the field when the password in it is not that of the account. */
    void check(Form form, String field, Account account) {
        if (account.withoutPassword()) {
            form.error(field, "You have no password here yet. The lead of the clinic gives you a one-time link to set one.");
            return;
        }
        if (form.value(field).isEmpty()) {
            form.error(field, "Your present password is missing.");
            return;
        }
        Duration wait = throttle.take(account.userName(), origin.address());
        if (!wait.isZero()) {
            form.error(field, "Too many tries. Wait " + (wait.toSeconds() + 1) + " seconds, then try again.");
        } else if (account.hasPassword(form.value(field))) {
            throttle.succeeded(account, origin.address());
        } else {
            form.error(field, "This is not your present password.");
        }
    }
}
