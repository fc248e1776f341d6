package org.steadwork.storage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.kernel.RefusedStartException;

/**
 * The secret under which H2 seals its file (AES). H2 itself stretches a password hardly at all, so a short one is refused; {@code make-key}
 * makes one of 256 random bits.
 */
public final class DatabaseKey {

    static final int SHORTEST = 32;
    private static final String SETTING = "steadwork.database.";

    private final String secret;

    private DatabaseKey(String secret) {
        this.secret = secret;
    }

    /** @throws RefusedStartException when it has fewer than {@value #SHORTEST} characters */
    static DatabaseKey of(String secret) {
        if (secret.strip().length() < SHORTEST) {
            throw new RefusedStartException("The database key is too short: it needs at least " + SHORTEST + " characters. The command make-key FILE makes a good one.");
        }
        return new DatabaseKey(secret.strip());
    }

    /** Finds the key of {@code steadwork.database.key} or {@code steadwork.database.key-file}; {@code name} is {@code key} or {@code new-key}. */
    static Optional<DatabaseKey> from(Config config, String name) {
        Optional<String> file = config.getOptionalValue(SETTING + name + "-file", String.class);
        if (file.isEmpty()) {
            return config.getOptionalValue(SETTING + name, String.class).map(DatabaseKey::of);
        }
        try {
            return Optional.of(of(Files.readString(Path.of(file.get()))));
        } catch (IOException e) {
            throw new RefusedStartException("The file of the database key, " + file.get() + ", cannot be read. Without the key the clinic cannot be opened.", e);
        }
    }

    /** Returns the password of the file: it has no blank in it, which would end it for H2. */
    String filePassword() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
