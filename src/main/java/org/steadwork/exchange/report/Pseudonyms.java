package org.steadwork.exchange.report;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Stands for a case or a patient towards one bearer: a keyed hash, since file numbers are few and a plain hash of them could be tried out.
 * Source: HMAC, RFC 2104, with SHA-256; shortened to 128 bits.
 */
final class Pseudonyms {

    private static final int BYTES = 16;

    private final SecretKeySpec key;

    /** @param hex 256 bits, known to this clinic only */
    Pseudonyms(String hex) {
        key = new SecretKeySpec(HexFormat.of().parseHex(hex), "HmacSHA256");
    }

    /** @param kind {@code case} or {@code patient}, so that numbers of both never give the same */
    String of(String kind, long id) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            return HexFormat.of().formatHex(Arrays.copyOf(mac.doFinal((kind + " " + id).getBytes(StandardCharsets.UTF_8)), BYTES));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java has HMAC-SHA-256", e);
        }
    }
}
