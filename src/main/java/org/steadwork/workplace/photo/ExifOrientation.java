package org.steadwork.workplace.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * Reads from a JPEG which way up its picture is, a number in [1, 8]; 1, upright, when nothing readable is said.
 * Source: CIPA DC-008 (Exif 2.32), 4.6.4 A, tag 274 Orientation; 4.5.4, APP1; TIFF 6.0, image file directory.
 */
final class ExifOrientation {

    static final int UPRIGHT = 1;

    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY_BYTES = 12;
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    private ExifOrientation() {
    }

    static int of(byte[] jpeg) {
        int at = 2;
        while (at + 4 <= jpeg.length && (jpeg[at] & 0xFF) == 0xFF) {
            int marker = jpeg[at + 1] & 0xFF;
            int length = (jpeg[at + 2] & 0xFF) << 8 | jpeg[at + 3] & 0xFF;
            if (marker == START_OF_SCAN || length < 2 || at + 2 + length > jpeg.length) {
                return UPRIGHT;
            }
            if (marker == APP1 && startsWith(jpeg, at + 4, EXIF)) {
                return inTiff(ByteBuffer.wrap(jpeg, at + 4 + EXIF.length, Math.max(0, length - 2 - EXIF.length)).slice());
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static boolean startsWith(byte[] bytes, int at, byte[] wanted) {
        for (int i = 0; i < wanted.length; i++) {
            if (at + i >= bytes.length || bytes[at + i] != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    private static int inTiff(ByteBuffer tiff) {
        if (tiff.limit() < 8) {
            return UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = tiff.getInt(4) & 0xFFFF_FFFFL;
        if (directory + 2 > tiff.limit()) {
            return UPRIGHT;
        }
        int entries = tiff.getShort((int) directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            long entry = directory + 2 + (long) i * ENTRY_BYTES;
            if (entry + ENTRY_BYTES > tiff.limit()) {
                return UPRIGHT;
            }
            if ((tiff.getShort((int) entry) & 0xFFFF) == ORIENTATION && tiff.getShort((int) entry + 2) == SHORT) {
                int value = tiff.getShort((int) entry + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }
}
