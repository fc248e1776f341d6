package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import org.steadwork.web.Form;

/** Asks who is signed in for the password again, before something that a stolen session must not do; guesses are slowed down as at sign-in. */
@ApplicationScoped
public class PasswordAsked {

    @Inject
    SignInThrottle throttle;

    /** Notes an error at the field when the password in it is not that of the account. What is counted stays counted, whatever the page does. */
    public void check(Form form, String field, Account account) {
        if (account.withoutPassword()) {
            form.error(field, "You have no password here yet. The lead of the clinic gives you a one-time link to set one.");
            return;
        }
        if (form.value(field).isEmpty()) {
            form.error(field, "Type the password you sign in with.");
            return;
        }
        Duration wait = throttle.takeAgain(account);
        if (!wait.isZero()) {
            form.error(field, "Too many tries. Wait " + (wait.toSeconds() + 1) + " seconds, then try again.");
        } else if (account.hasPassword(form.value(field))) {
            throttle.succeededAgain(account);
        } else {
            form.error(field, "The password is not right. Type the password you sign in with.");
        }
    }
}
