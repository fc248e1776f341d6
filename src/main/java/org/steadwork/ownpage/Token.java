package org.steadwork.ownpage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** 256 random bits that open something; only their SHA-256 is stored. */
final class Token {

    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Token() {
    }

    /** Returns 43 letters and digits that fit into an address. */
    static String fresh() {
        byte[] bits = new byte[BYTES];
        RANDOM.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
