package org.steadwork.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** 256 random bits that open something; only their SHA-256 is stored, so that a stolen table opens nothing. */
public final class OpaqueToken {

    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private OpaqueToken() {
    }

    /** Returns 43 letters and digits that fit into an address and a cookie. */
    public static String fresh() {
        byte[] bits = new byte[BYTES];
        RANDOM.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    /** Returns the SHA-256 as 64 hexadecimal digits. */
    public static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
