package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.ConfigProvider;
import org.steadwork.backup.BackupCommand;
import org.steadwork.backup.RefusedBackupException;
import org.steadwork.backup.RestoreCommand;
import org.steadwork.letter.CheckLetter;
import org.steadwork.storage.ChangeKeyCommand;
import org.steadwork.storage.MakeKeyCommand;
import org.steadwork.storage.StartCheck;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.web.PlainHttpGuard;

/**
 * Starts the clinic. With the word {@code demo} it starts the invented demo clinic instead, which has a database of its own;
 * a word it does not know is refused, so that a slip never opens the wrong records. What keeps it from starting is said in one line.
 */
@QuarkusMain
public final class Steadwork {

    private static final int IN_TROUBLE = 1;
    private static final int WRONG_CALL = 2;

    private Steadwork() {
    }

    public static void main(String... words) {
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
        Config config = ConfigProvider.getConfig();
        switch (command) {
            case "" -> {
                PlainHttpGuard.check(config);
                StartCheck.run(config);
                Quarkus.run();
            }
            case "check-letter" -> {
                StartCheck.run(config);
                System.setProperty("quarkus.http.host-enabled", "false");
                Quarkus.run(CheckLetter.class, words.toArray(String[]::new));
            }
            case "backup" -> System.exit(BackupCommand.run(config, words, System.out));
            case "restore" -> System.exit(RestoreCommand.run(config, words, System.out));
            case "change-database-key" -> System.exit(ChangeKeyCommand.run(config, words, System.out));
            case "make-key" -> System.exit(MakeKeyCommand.run(words, System.out));
            default -> {
                System.err.println("Steadwork is started without a word, or with the word demo. Commands: backup FILE, restore FILE, change-database-key,"
                        + " make-key FILE, check-letter FILE. It was given: " + command + " " + String.join(" ", words));
                System.exit(WRONG_CALL);
            }
        }
    }
}
