package org.steadwork.account.code;

import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.OptionalLong;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Time-based one-time codes. A step is 30 seconds counted from 1970; the code of a step is the truncated HMAC of its number.
 * Source: RFC 6238 (time-based), RFC 4226 section 5.3 (truncation). Codes here have six digits and HMAC-SHA-1, which is what
 * authenticator applications expect.
 */
public final class OneTimeCode {

    public static final int DIGITS = 6;
    public static final int STEP_SECONDS = 30;
    private static final String ALGORITHM = "HmacSHA1";
    /** A clock may be off by one step either way. */
    private static final int STEPS_EITHER_WAY = 1;

    private OneTimeCode() {
    }

    public static long step(Instant moment) {
        return Math.floorDiv(moment.getEpochSecond(), STEP_SECONDS);
    }

    /** Returns the code of a step with its leading zeros. */
    public static String of(byte[] key, long step) {
        return of(key, step, DIGITS, ALGORITHM);
    }

    /**
     * Returns a code of 1 to 9 digits.
     *
     * @param algorithm {@code HmacSHA1}, {@code HmacSHA256} or {@code HmacSHA512}
     */
    static String of(byte[] key, long step, int digits, String algorithm) {
        byte[] hash = hmac(key, ByteBuffer.allocate(Long.BYTES).putLong(step).array(), algorithm);
        int offset = hash[hash.length - 1] & 0xf;
        int number = ByteBuffer.wrap(hash, offset, Integer.BYTES).getInt() & 0x7fffffff;
        int bound = 1;
        for (int i = 0; i < digits; i++) {
            bound *= 10;
        }
        return ("%0" + digits + "d").formatted(number % bound);
    }

    /**
     * Finds the step that a typed code belongs to: now, or one step before or after.
     *
     * @param after the last step that was taken already; that one and those before are not taken again
     */
    public static OptionalLong matching(byte[] key, String typed, Instant now, long after) {
        String code = typed.replaceAll("[\\s-]", "");
        OptionalLong found = OptionalLong.empty();
        for (long step = step(now) - STEPS_EITHER_WAY; step <= step(now) + STEPS_EITHER_WAY; step++) {
            if (step > after && same(of(key, step), code)) {
                found = OptionalLong.of(step);
            }
        }
        return found;
    }

    private static boolean same(String code, String typed) {
        int differs = code.length() ^ typed.length();
        for (int i = 0; i < code.length(); i++) {
            differs |= code.charAt(i) ^ (i < typed.length() ? typed.charAt(i) : 0);
        }
        return differs == 0;
    }

    private static byte[] hmac(byte[] key, byte[] text, String algorithm) {
        try {
            Mac mac = Mac.getInstance(algorithm);
            mac.init(new SecretKeySpec(key, algorithm));
            return mac.doFinal(text);
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("No such code: " + e.getMessage(), e);
        }
    }
}
