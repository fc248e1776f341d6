package org.steadwork.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;

/** The secret that seals backups, from a setting, the environment or a file. It is never stored beside them. */
public final class BackupKey {

    static final String SETTING = "steadwork.backup.key";
    static final String FILE_SETTING = "steadwork.backup.key-file";
    /** Shorter ones are guessed too soon; the derivation slows a guesser, it does not stop one. */
    static final int SHORTEST = 16;

    private final char[] secret;

    private BackupKey(char[] secret) {
        this.secret = secret;
    }

    /** @throws RefusedBackupException when it has fewer than {@value #SHORTEST} characters */
    public static BackupKey of(String secret) {
        String stripped = secret.strip();
        if (stripped.length() < SHORTEST) {
            throw new RefusedBackupException("The backup key is too short: it needs at least " + SHORTEST + " characters");
        }
        return new BackupKey(stripped.toCharArray());
    }

    /**
     * Finds the key in the settings.
     *
     * @return empty when none is set
     * @throws RefusedBackupException when its file cannot be read, or it is too short
     */
    public static Optional<BackupKey> from(Config config) {
        Optional<String> file = config.getOptionalValue(FILE_SETTING, String.class);
        if (file.isEmpty()) {
            return config.getOptionalValue(SETTING, String.class).map(BackupKey::of);
        }
        try {
            return Optional.of(of(Files.readString(Path.of(file.get()))));
        } catch (IOException e) {
            throw new RefusedBackupException("The file of the backup key, " + file.get() + ", cannot be read", e);
        }
    }

    char[] secret() {
        return secret.clone();
    }

    @Override
    public String toString() {
        return "a backup key";
    }
}
