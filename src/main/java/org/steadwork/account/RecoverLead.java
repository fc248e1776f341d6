package org.steadwork.account;

import io.quarkus.runtime.QuarkusApplication;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.web.Dates;

/**
 * The command {@code recover-lead [USER-NAME]}: prints a one-time link for a lead who is locked out, for whoever has the machine and its files
 * anyway. With {@code without-codes} after the name it takes the second factor off as well. Ends with 0, or with 2 when nothing was made.
 */
public class RecoverLead implements QuarkusApplication {

    private static final String WITHOUT_CODES = "without-codes";

    @Inject
    Accounts accounts;

    @Inject
    SignInLinks links;

    @Inject
    SecondFactors factors;

    @Inject
    AuditTrail audit;

    @ConfigProperty(name = "quarkus.http.port")
    int port;

    @Override
    @ActivateRequestContext
    public int run(String... words) {
        return recover(List.of(words), System.out);
    }

    @Transactional
    int recover(List<String> words, PrintStream out) {
        List<Account> leads = accounts.leads();
        List<String> names = words.stream().filter(word -> !word.equals(WITHOUT_CODES)).toList();
        if (names.size() > 1) {
            out.println("recover-lead takes one user name, and without-codes after it where the second factor is lost too.");
            return 2;
        }
        Optional<Account> lead = names.isEmpty() ? leads.size() == 1 ? Optional.of(leads.get(0)) : Optional.empty()
                : leads.stream().filter(one -> one.userName().equals(names.get(0).strip().toLowerCase())).findFirst();
        if (lead.isEmpty()) {
            out.println(leads.isEmpty() ? "No lead may sign in here." : "Name one of the leads: "
                    + leads.stream().map(Account::userName).collect(Collectors.joining(", ")));
            return 2;
        }
        if (words.contains(WITHOUT_CODES)) {
            factors.drop(lead.get());
            audit.record("took one-time codes off by command", null, null, lead.get().userName());
        }
        SignInLinks.Made made = links.make(lead.get(), "recover-lead");
        audit.record("made a one-time link by command", null, null, lead.get().userName());
        out.println("Start the clinic and open this link, once, before " + Dates.shown(made.until()).replace('\u00a0', ' ') + ":");
        out.println("http://localhost:" + port + "/sign-in/link/" + made.token());
        return 0;
    }
}
