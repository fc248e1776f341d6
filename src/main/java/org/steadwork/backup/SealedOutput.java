package org.steadwork.backup;

import java.io.IOException;
import java.io.OutputStream;

/** Seals what is written, chunk by chunk. Only {@link #close} writes the last chunk: without it the file does not open. */
final class SealedOutput extends OutputStream {

    private final OutputStream to;
    private final Seal seal;
    private final byte[] chunk = new byte[Seal.CHUNK];
    private int filled;
    private int number;

    SealedOutput(OutputStream to, Seal seal) throws IOException {
        this.to = to;
        this.seal = seal;
        to.write(seal.head());
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[]{(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        int done = 0;
        while (done < length) {
            if (filled == chunk.length) {
                flushChunk(false);
            }
            int fits = Math.min(chunk.length - filled, length - done);
            System.arraycopy(bytes, from + done, chunk, filled, fits);
            filled += fits;
            done += fits;
        }
    }

    private void flushChunk(boolean last) throws IOException {
        to.write(seal.seal(chunk, filled, number, last));
        number = Math.incrementExact(number);
        filled = 0;
    }

    @Override
    public void close() throws IOException {
        flushChunk(true);
        to.close();
    }
}
