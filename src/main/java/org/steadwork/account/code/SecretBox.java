package org.steadwork.account.code;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Keeps a small secret at rest: AES-256-GCM with a key made from the clinic's own (NIST SP 800-38D), or, when the clinic set none, as it is,
 * marked so. What was kept before a key was set still opens.
 */
public final class SecretBox {

    private static final String SEALED = "g1:";
    private static final String PLAIN = "p1:";
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final SecretKeySpec key;

    /** @param words at least 32 characters that are hard to guess, or null for no key */
    public SecretBox(String words) {
        if (words == null) {
            key = null;
            return;
        }
        if (words.length() < 32) {
            throw new IllegalArgumentException("The key must have at least 32 characters, but has " + words.length());
        }
        try {
            key = new SecretKeySpec(MessageDigest.getInstance("SHA-256").digest(("steadwork-secrets-1:" + words).getBytes(StandardCharsets.UTF_8)), "AES");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    public boolean encrypts() {
        return key != null;
    }

    /** @param owner whose secret it is; a row copied to another owner does not open */
    public String close(byte[] secret, String owner) {
        if (key == null) {
            return PLAIN + Base64.getEncoder().encodeToString(secret);
        }
        byte[] nonce = new byte[NONCE_BYTES];
        RANDOM.nextBytes(nonce);
        try {
            byte[] sealed = cipher(Cipher.ENCRYPT_MODE, nonce, owner).doFinal(secret);
            return SEALED + Base64.getEncoder().encodeToString(ByteBuffer.allocate(nonce.length + sealed.length).put(nonce).put(sealed).array());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("The secret cannot be encrypted", e);
        }
    }

    /** @throws IllegalStateException when it was changed, belongs to another owner, or was closed with another key */
    public byte[] open(String kept, String owner) {
        byte[] bytes = Base64.getDecoder().decode(kept.substring(SEALED.length()));
        if (kept.startsWith(PLAIN)) {
            return bytes;
        }
        if (key == null) {
            throw new IllegalStateException("The secret is encrypted, but no key is set");
        }
        try {
            return cipher(Cipher.DECRYPT_MODE, Arrays.copyOf(bytes, NONCE_BYTES), owner).doFinal(bytes, NONCE_BYTES, bytes.length - NONCE_BYTES);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("The secret does not open: another key, or it was changed", e);
        }
    }

    private Cipher cipher(int mode, byte[] nonce, String owner) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(owner.getBytes(StandardCharsets.UTF_8));
        return cipher;
    }
}
