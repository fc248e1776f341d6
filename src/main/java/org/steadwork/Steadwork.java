package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.ConfigProvider;
import org.slf4j.LoggerFactory;
import org.steadwork.account.CheckAudit;
import org.steadwork.account.OpenIdSettings;
import org.steadwork.account.RecoverLead;
import org.steadwork.backup.BackupCommand;
import org.steadwork.backup.MoveCommand;
import org.steadwork.backup.RefusedBackupException;
import org.steadwork.backup.RestoreCommand;
import org.steadwork.caseload.SumUpCaseload;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.letter.CheckLetter;
import org.steadwork.storage.ChangeKeyCommand;
import org.steadwork.storage.CompactCommand;
import org.steadwork.storage.MakeKeyCommand;
import org.steadwork.storage.StartCheck;
import org.steadwork.web.PlainHttpGuard;

/**
 * Starts the clinic. With the word {@code demo} it starts the invented demo clinic instead, which has a database of its own;
 * a word it does not know is refused, so that a slip never opens the wrong records. What keeps it from starting is said in one line.
 */
@QuarkusMain
public final class Steadwork {

    private static final int IN_TROUBLE = 1;
    private static final int WRONG_CALL = 2;

    /** What runs on the clinic's records and ends, without its pages. */
    private static final Map<String, Class<? extends QuarkusApplication>> ON_RECORDS = Map.of("check-letter", CheckLetter.class, "check-audit", CheckAudit.class,
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
        try {
            run(given.isEmpty() ? "" : given.get(0), given.isEmpty() ? given : given.subList(1, given.size()));
        } catch (RefusedStartException | RefusedBackupException e) {
            System.err.println(e.getMessage());
            System.exit(IN_TROUBLE);
        }
    }

    private static void run(String command, List<String> words) {
        if (command.equals("rehearse")) {
            Rehearsal.start();
            return;
        }
        Config config = ConfigProvider.getConfig();
        if (ON_RECORDS.containsKey(command)) {
            StartCheck.runForServer(config);
            System.setProperty("quarkus.http.host-enabled", "false");
            Quarkus.run(ON_RECORDS.get(command), words.toArray(String[]::new));
            return;
        }
        switch (command) {
            case "" -> {
                PlainHttpGuard.check(config);
                OpenIdSettings.read(config);
                StartCheck.runForServer(config);
                Quarkus.run();
            }
            case "backup" -> System.exit(BackupCommand.run(config, words, System.out));
            case "restore" -> System.exit(RestoreCommand.run(config, words, System.out));
            case "move-to-postgresql" -> System.exit(MoveCommand.run(config, words, System.out));
            case "change-database-key" -> System.exit(ChangeKeyCommand.run(config, words, System.out));
            case "compact" -> System.exit(CompactCommand.run(config, words, System.out));
            case "make-key" -> System.exit(MakeKeyCommand.run(words, System.out));
            default -> {
                System.err.println("Steadwork is started without a word, or with the word demo. Commands: backup FILE, restore FILE, move-to-postgresql,"
                        + " change-database-key, compact, make-key FILE, check-letter FILE says whether a PDF was signed here, check-audit checks the audit trail, recover-lead [USER-NAME]"
                        + " prints a one-time link for a lead who is locked out, sum-up sums up the cases for the caseload anew. It was given: "
                        + command + " " + String.join(" ", words));
                System.exit(WRONG_CALL);
            }
        }
    }
}
