package org.steadwork.backup;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;

/** Passes bytes on and keeps their SHA-256. */
final class DigestingOutput extends FilterOutputStream {

    private final MessageDigest sha = RowDigest.sha256();

    DigestingOutput(OutputStream to) {
        super(to);
    }

    @Override
    public void write(int b) throws IOException {
        sha.update((byte) b);
        out.write(b);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        sha.update(bytes, from, length);
        out.write(bytes, from, length);
    }

    /** Returns the digest of what was written so far, and begins anew. */
    byte[] digest() {
        return sha.digest();
    }
}
