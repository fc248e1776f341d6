package org.steadwork.backup;

import java.io.IOException;
import java.io.InputStream;

/** Opens what {@link SealedOutput} sealed; every read answers from a chunk that was found whole and in its place. */
final class SealedInput extends InputStream {

    private final InputStream from;
    private final Seal seal;
    private byte[] ahead;
    private byte[] plain = {};
    private int read;
    private int number;
    private boolean ended;

    /** @throws RefusedBackupException when the head is not ours or the key is another */
    SealedInput(InputStream from, BackupKey key) throws IOException {
        this.from = from;
        this.seal = Seal.ofHead(from.readNBytes(Seal.HEAD_BYTES), key);
        this.ahead = from.readNBytes(Seal.CHUNK + Seal.TAG);
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int to, int length) throws IOException {
        while (read == plain.length) {
            if (ended) {
                return -1;
            }
            next();
        }
        int given = Math.min(length, plain.length - read);
        System.arraycopy(plain, read, bytes, to, given);
        read += given;
        return given;
    }

    private void next() throws IOException {
        byte[] now = ahead;
        ahead = now.length == Seal.CHUNK + Seal.TAG ? from.readNBytes(Seal.CHUNK + Seal.TAG) : new byte[0];
        ended = ahead.length == 0;
        plain = seal.open(now, now.length, number, ended);
        number = Math.incrementExact(number);
        read = 0;
    }

    @Override
    public void close() throws IOException {
        from.close();
    }
}
