package org.steadwork.backup;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.ProviderException;
import java.security.SecureRandom;
import java.util.Arrays;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * The sealing of a backup file, made of what every Java has. The head, {@value #HEAD_BYTES} bytes, is plain: sixteen letters, the iterations,
 * a salt, a nonce prefix, and a code that tells a wrong key from a damaged file. Then come chunks of 64 KiB, each sealed with AES-256-GCM
 * under the nonce prefix ‖ number ‖ last?, with the head as associated data: a chunk that is changed, moved, left out or cut off at the end
 * does not open.
 * Source: V. T. Hoang, R. Reyhanitabar, P. Rogaway, D. Vizár, Online Authenticated-Encryption and its Nonce-Reuse Misuse-Resistance (2015), the
 * STREAM construction; NIST SP 800-38D (GCM); RFC 8018 (PBKDF2). The number of iterations is OWASP's of 2023 for HMAC-SHA-256.
 */
final class Seal {

    static final byte[] MAGIC = "STEADWORK-BACKUP".getBytes(StandardCharsets.US_ASCII);
    static final int CHUNK = 64 * 1024;
    static final int TAG = 16;
    static final int HEAD_BYTES = 16 + 4 + 16 + 7 + 16;

    private static final int ITERATIONS = 600_000;
    private static final int MOST_ITERATIONS = 10_000_000;
    private static final int SALT = 16;
    private static final int PREFIX = 7;

    private final byte[] head;
    private final SecretKeySpec key;

    private Seal(byte[] head, SecretKeySpec key) {
        this.head = head;
        this.key = key;
    }

    /** Makes the seal of a new file. */
    static Seal fresh(BackupKey secret) {
        byte[] random = new byte[SALT + PREFIX];
        new SecureRandom().nextBytes(random);
        byte[] open = ByteBuffer.allocate(HEAD_BYTES - TAG).put(MAGIC).putInt(ITERATIONS).put(random).array();
        byte[] derived = secret.derived(Arrays.copyOfRange(open, MAGIC.length + 4, MAGIC.length + 4 + SALT), ITERATIONS);
        byte[] head = ByteBuffer.allocate(HEAD_BYTES).put(open).put(check(derived, open)).array();
        return new Seal(head, new SecretKeySpec(derived, 0, 32, "AES"));
    }

    /** @throws RefusedBackupException when the head is no head of ours, or was sealed with another key */
    static Seal ofHead(byte[] head, BackupKey secret) {
        if (head.length < HEAD_BYTES || !Arrays.equals(head, 0, MAGIC.length, MAGIC, 0, MAGIC.length)) {
            throw new RefusedBackupException("This is no backup of Steadwork");
        }
        byte[] open = Arrays.copyOf(head, HEAD_BYTES - TAG);
        int iterations = ByteBuffer.wrap(open).getInt(MAGIC.length);
        if (iterations < 1 || iterations > MOST_ITERATIONS) {
            throw new RefusedBackupException("The backup is damaged at its head, or was made by a newer Steadwork");
        }
        byte[] derived = secret.derived(Arrays.copyOfRange(open, MAGIC.length + 4, MAGIC.length + 4 + SALT), iterations);
        if (!MessageDigest.isEqual(check(derived, open), Arrays.copyOfRange(head, HEAD_BYTES - TAG, HEAD_BYTES))) {
            throw new RefusedBackupException("The key does not open this backup: it was sealed with another one, or its head is damaged");
        }
        return new Seal(head, new SecretKeySpec(derived, 0, 32, "AES"));
    }

    byte[] head() {
        return head;
    }

    byte[] seal(byte[] plain, int length, int number, boolean last) {
        return apply(Cipher.ENCRYPT_MODE, plain, length, number, last);
    }

    /** @throws RefusedBackupException when the chunk is not the one that was sealed at this place */
    byte[] open(byte[] sealed, int length, int number, boolean last) {
        return apply(Cipher.DECRYPT_MODE, sealed, length, number, last);
    }

    private byte[] apply(int mode, byte[] bytes, int length, int number, boolean last) {
        byte[] nonce = ByteBuffer.allocate(12).put(head, MAGIC.length + 4 + SALT, PREFIX).putInt(number).put((byte) (last ? 1 : 0)).array();
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(8 * TAG, nonce));
            cipher.updateAAD(head);
            return cipher.doFinal(bytes, 0, length);
        } catch (AEADBadTagException | ProviderException e) {
            throw new RefusedBackupException("The backup is damaged or cut off; nothing of it was taken", e);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java has AES-GCM", e);
        }
    }

    private static byte[] check(byte[] derived, byte[] open) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(derived, 32, 32, "HmacSHA256"));
            return Arrays.copyOf(mac.doFinal(open), TAG);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java has HMAC", e);
        }
    }
}
