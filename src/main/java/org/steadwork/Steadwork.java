package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;
import java.util.Map;
import org.slf4j.LoggerFactory;
import org.steadwork.account.CheckAudit;
import org.steadwork.account.RecoverLead;
import org.steadwork.caseload.SumUpCaseload;
import org.steadwork.letter.CheckLetter;

/**
 * Starts the clinic. With the word {@code demo} it starts the invented demo clinic instead, which has a database of its own;
 * any other word is refused, so that a slip never opens the wrong records.
 */
@QuarkusMain
public final class Steadwork {

    /** What runs on the clinic's records and ends, without its pages. */
    private static final Map<String, Class<? extends QuarkusApplication>> COMMANDS = Map.of("check-letter", CheckLetter.class, "check-audit", CheckAudit.class,
            "recover-lead", RecoverLead.class, "sum-up", SumUpCaseload.class);

    private Steadwork() {
    }

    public static void main(String... words) {
        // the framework starts with several threads; two that log first at one moment would put a warning on the console
        LoggerFactory.getILoggerFactory();
        List<String> given = List.of(words);
        if (!given.isEmpty() && given.get(0).equals("demo")) {
            System.setProperty("quarkus.profile", "demo");
            given = given.subList(1, given.size());
        }
        if (given.isEmpty()) {
            Quarkus.run();
        } else if (given.equals(List.of("rehearse"))) {
            Rehearsal.start();
        } else if (COMMANDS.containsKey(given.get(0))) {
            System.setProperty("quarkus.http.host-enabled", "false");
            Quarkus.run(COMMANDS.get(given.get(0)), given.subList(1, given.size()).toArray(String[]::new));
        } else {
            System.err.println("Steadwork is started without a word, or with the word demo; check-letter FILE says whether a PDF was signed here;"
                    + " check-audit checks the audit trail; recover-lead [USER-NAME] prints a one-time link for a lead who is locked out;"
                    + " sum-up sums up the cases for the caseload anew."
                    + " It was given: " + String.join(" ", words));
            System.exit(2);
        }
    }
}
