package org.steadwork.letter.pdf;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A finished PDF.
 *
 * @param bytes the file; owned by this record, not to be changed
 * @param pages number of pages, 1 or more
 */
public record LetterPdf(byte[] bytes, int pages) {

    /** Returns the SHA-256 of the file as 64 lower-case hexadecimal digits. */
    public String sha256() {
        return sha256(bytes);
    }

    /** Returns the SHA-256 of any bytes as 64 lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
