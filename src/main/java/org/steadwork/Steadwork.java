package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;
import org.steadwork.account.CheckAudit;
import org.steadwork.account.RecoverLead;
import org.steadwork.letter.CheckLetter;

/**
 * Starts the clinic. With the word {@code demo} it starts the invented demo clinic instead, which has a database of its own;
 * any other word is refused, so that a slip never opens the wrong records.
 */
@QuarkusMain
public final class Steadwork {

    private Steadwork() {
    }

    public static void main(String... words) {
        List<String> given = List.of(words);
        if (!given.isEmpty() && given.get(0).equals("demo")) {
            System.setProperty("quarkus.profile", "demo");
            given = given.subList(1, given.size());
        }
        if (given.isEmpty()) {
            Quarkus.run();
        } else if (given.get(0).equals("check-letter")) {
            System.setProperty("quarkus.http.host-enabled", "false");
            Quarkus.run(CheckLetter.class, given.subList(1, given.size()).toArray(String[]::new));
        } else if (given.get(0).equals("check-audit")) {
            System.setProperty("quarkus.http.host-enabled", "false");
            Quarkus.run(CheckAudit.class, given.subList(1, given.size()).toArray(String[]::new));
        } else if (given.get(0).equals("recover-lead")) {
            System.setProperty("quarkus.http.host-enabled", "false");
            Quarkus.run(RecoverLead.class, given.subList(1, given.size()).toArray(String[]::new));
        } else {
            System.err.println("Steadwork is started without a word, or with the word demo; check-letter FILE says whether a PDF was signed here;"
                    + " check-audit checks the audit trail; recover-lead [USER-NAME] prints a one-time link for a lead who is locked out."
                    + " It was given: " + String.join(" ", words));
            System.exit(2);
        }
    }
}
