package org.steadwork.account.password;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * How passwords are kept: bcrypt over HMAC-SHA-384 of the password, in Base64. bcrypt alone reads no more than 72 bytes and would cut a longer
 * password in silence; the 64 letters before it carry the whole. The fixed key of the HMAC makes the value this product's own, so that
 * plain hashes stolen elsewhere are of no use here. Hashes of before, bcrypt over the password itself, still open and are replaced at sign-in.
 */
public final class PasswordHash {

    private static final String MARK = "h1:";
    private static final SecretKeySpec KEY = new SecretKeySpec("steadwork-password-1".getBytes(StandardCharsets.UTF_8), "HmacSHA384");
    private static final int BCRYPT_READS = 72;

    private PasswordHash() {
    }

    /** @param cost the number of bcrypt rounds as a power of two, 4 to 31 */
    public static String of(String password, int cost) {
        return MARK + BcryptUtil.bcryptHash(shortened(password), cost);
    }

    public static boolean matches(String password, String stored) {
        if (stored.startsWith(MARK)) {
            return BcryptUtil.matches(shortened(password), stored.substring(MARK.length()));
        }
        // as much work for a password that is too long as for any other
        boolean right = BcryptUtil.matches(password, stored);
        return right && password.getBytes(StandardCharsets.UTF_8).length <= BCRYPT_READS;
    }

    /** True for a hash made in the old way or with another cost than is asked for now. */
    public static boolean outdated(String stored, int cost) {
        return !stored.startsWith(MARK) || !stored.matches("h1:\\$2[abxy]\\$%02d\\$.*".formatted(cost));
    }

    private static String shortened(String password) {
        try {
            Mac mac = Mac.getInstance("HmacSHA384");
            mac.init(KEY);
            return Base64.getEncoder().encodeToString(mac.doFinal(password.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java has HMAC-SHA-384", e);
        }
    }
}
