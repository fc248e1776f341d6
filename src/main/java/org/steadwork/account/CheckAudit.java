package org.steadwork.account;

import io.quarkus.runtime.QuarkusApplication;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.PrintStream;

/** The command {@code check-audit}: checks the whole audit trail. Ends with 0 when it is sound, with 1 when not, with 2 on a wrong call. */
public class CheckAudit implements QuarkusApplication {

    @Inject
    AuditCheck check;

    @Override
    @ActivateRequestContext
    public int run(String... words) {
        return check(words, System.out);
    }

    int check(String[] words, PrintStream out) {
        if (words.length != 0) {
            out.println("check-audit takes no words after it.");
            return 2;
        }
        AuditCheck.Result result = check.whole();
        out.println((result.sound() ? "The audit trail is sound. " : "The audit trail is broken. ") + result.words());
        return result.sound() ? 0 : 1;
    }
}
