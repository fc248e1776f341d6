package org.steadwork.backup;

import java.math.BigInteger;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** A fingerprint of a set of rows, whatever their order: the sum of the rows' SHA-256, modulo 2 to the 256th. */
final class RowDigest {

    private static final BigInteger MODULUS = BigInteger.ONE.shiftLeft(256);

    private final MessageDigest sha = sha256();
    private BigInteger sum = BigInteger.ZERO;

    void add(byte[] row) {
        sum = sum.add(new BigInteger(1, sha.digest(row))).mod(MODULUS);
    }

    String hex() {
        return sum.toString(16);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
