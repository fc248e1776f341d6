package org.steadwork.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.Optional;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.eclipse.microprofile.config.Config;

/** The secret that seals backups, from a setting, the environment or a file. It is never stored beside them. */
public final class BackupKey {

    static final String SETTING = "steadwork.backup.key";
    static final String FILE_SETTING = "steadwork.backup.key-file";
    /** Shorter ones are guessed too soon; the derivation slows a guesser, it does not stop one. */
    static final int SHORTEST = 16;

    private static final int DERIVED_BITS = 512;

    private final char[] secret;
    private Derived last;

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

    /** Derives 64 bytes for one file; the last are remembered, since a file just written is read back at once. */
    synchronized byte[] derived(byte[] salt, int iterations) {
        if (last == null || last.iterations != iterations || !Arrays.equals(last.salt, salt)) {
            try {
                last = new Derived(salt.clone(), iterations, SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                        .generateSecret(new PBEKeySpec(secret, salt, iterations, DERIVED_BITS)).getEncoded());
            } catch (GeneralSecurityException e) {
                throw new IllegalStateException("Every Java has PBKDF2", e);
            }
        }
        return last.bytes;
    }

    private record Derived(byte[] salt, int iterations, byte[] bytes) {
    }

    @Override
    public String toString() {
        return "a backup key";
    }
}
