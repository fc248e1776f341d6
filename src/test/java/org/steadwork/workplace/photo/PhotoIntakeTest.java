package org.steadwork.workplace.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.web.TestPictures;

class PhotoIntakeTest {

    private static final String SECRET = "lat 51.5 long -0.12 of a garden";

    /**
     * Which stored corner is shown at the top left and top right, by orientation. The stored picture has R top left, G top right, B bottom
     * left, W bottom right. Source: CIPA DC-008 (Exif 2.32), 4.6.4 A, Orientation: "the 0th row is at the visual ... and the 0th column is
     * the visual ..." for each of the eight values.
     */
    @ParameterizedTest(name = "orientation {0} shows {1} {2} above {3} {4}, {5} byte order")
    @CsvSource({"1,R,G,B,W,big", "2,G,R,W,B,big", "3,W,B,G,R,big", "4,B,W,R,G,big", "5,R,B,G,W,big", "6,B,R,W,G,big", "7,W,G,B,R,big", "8,G,W,R,B,big",
            "6,B,R,W,G,little", "8,G,W,R,B,little"})
    void aPictureIsTurnedUpright(int orientation, String topLeft, String topRight, String bottomLeft, String bottomRight, String order) throws IOException {
        byte[] turned = withExif(TestPictures.jpeg(80, 40), orientation, order.equals("big") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        Photo photo = PhotoIntake.take(turned);
        assertEquals(orientation >= 5 ? 40 : 80, photo.width());
        BufferedImage shown = ImageIO.read(new ByteArrayInputStream(photo.picture()));
        int w = shown.getWidth();
        int h = shown.getHeight();
        assertEquals(topLeft + topRight + bottomLeft + bottomRight, colour(shown.getRGB(w / 4, h / 4)) + colour(shown.getRGB(3 * w / 4, h / 4))
                + colour(shown.getRGB(w / 4, 3 * h / 4)) + colour(shown.getRGB(3 * w / 4, 3 * h / 4)));
    }

    @Test
    void nothingButThePictureIsKept() {
        byte[] jpeg = withExif(TestPictures.jpeg(80, 40), 1, ByteOrder.BIG_ENDIAN);
        assertTrue(contains(jpeg, SECRET), "the test's own file must hold what is to go");
        Photo photo = PhotoIntake.take(jpeg);
        for (byte[] kept : new byte[][] {photo.picture(), photo.thumbnail()}) {
            assertFalse(contains(kept, SECRET));
            assertFalse(contains(kept, "Exif"));
        }
        byte[] png = pngWithText(TestPictures.png(80, 40));
        assertTrue(contains(png, SECRET));
        assertFalse(contains(PhotoIntake.take(png).picture(), SECRET));
        byte[] tail = Arrays.copyOf(TestPictures.jpeg(80, 40), TestPictures.jpeg(80, 40).length + 100);
        System.arraycopy(SECRET.getBytes(StandardCharsets.US_ASCII), 0, tail, tail.length - 60, SECRET.length());
        assertFalse(contains(PhotoIntake.take(tail).picture(), SECRET), "what hangs behind the picture goes too");
    }

    @Test
    void aLargePictureIsScaledAndASmallOneIsNot() throws IOException {
        Photo large = PhotoIntake.take(TestPictures.jpeg(5000, 1000));
        assertEquals(PhotoIntake.LONGEST_SIDE, large.width());
        assertEquals(400, large.height());
        BufferedImage thumbnail = ImageIO.read(new ByteArrayInputStream(large.thumbnail()));
        assertEquals(PhotoIntake.THUMBNAIL_SIDE, thumbnail.getWidth());
        assertEquals(30, PhotoIntake.take(TestPictures.png(30, 20)).width());
        assertEquals(1, PhotoIntake.take(TestPictures.png(1, 1)).height());
    }

    @Test
    void aPictureFullOfNoiseStillFitsWhereItIsKept() {
        BufferedImage noise = new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(11);
        for (int y = 0; y < noise.getHeight(); y++) {
            for (int x = 0; x < noise.getWidth(); x++) {
                noise.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        Photo photo = PhotoIntake.take(TestPictures.written(noise, "jpeg"));
        assertTrue(photo.picture().length <= PhotoIntake.MOST_KEPT_BYTES, photo.picture().length + " bytes");
    }

    @Test
    void aPictureThatWouldUnpackToGigabytesIsRefusedByItsHead() throws IOException {
        byte[] bomb = pngHead(50_000, 50_000);
        long before = System.nanoTime();
        RefusedPhoto refused = assertThrows(RefusedPhoto.class, () -> PhotoIntake.take(bomb));
        assertTrue(refused.getMessage().contains("50000 × 50000"), refused.getMessage());
        assertTrue(System.nanoTime() - before < 2_000_000_000L, "judged before anything is unpacked");
        assertThrows(RefusedPhoto.class, () -> PhotoIntake.take(pngHead(19_000, 19_000)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GIF89a", "<svg xmlns='http://www.w3.org/2000/svg'/>", "%PDF-1.4", "MZ", "\u0000\u0000"})
    void whatIsNoPictureIsRefused(String content) {
        assertThrows(RefusedPhoto.class, () -> PhotoIntake.take(content.getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void aPictureBrokenOffIsRefusedInWords() {
        byte[] png = TestPictures.png(400, 400);
        for (int length : new int[] {9, 20, 40, png.length / 2}) {
            RefusedPhoto refused = assertThrows(RefusedPhoto.class, () -> PhotoIntake.take(Arrays.copyOf(png, length)), length + " bytes");
            assertTrue(refused.getMessage().contains("cannot be read to its end"), refused.getMessage());
        }
        byte[] tooLong = Arrays.copyOf(TestPictures.jpeg(10, 10), PhotoIntake.MOST_BYTES + 1);
        assertTrue(assertThrows(RefusedPhoto.class, () -> PhotoIntake.take(tooLong)).getMessage().contains("at most 10 MB"));
    }

    @Test
    void aFileChangedAnywhereIsTakenOrRefusedAndNothingElse() {
        Random random = new Random(20260304);
        byte[][] files = {withExif(TestPictures.jpeg(60, 40), 6, ByteOrder.LITTLE_ENDIAN), TestPictures.png(60, 40)};
        for (int round = 0; round < 400; round++) {
            byte[] changed = files[round % 2].clone();
            for (int i = 0; i < 1 + round % 6; i++) {
                changed[random.nextInt(Math.min(changed.length, 300))] = (byte) random.nextInt();
            }
            try {
                PhotoIntake.take(changed);
            } catch (RefusedPhoto refused) {
                assertFalse(refused.getMessage().isBlank());
            }
        }
    }

    @Test
    void theSameFileGivesTheSameBytes() {
        byte[] file = TestPictures.jpeg(120, 90);
        assertArrayEquals(PhotoIntake.take(file).picture(), PhotoIntake.take(file).picture());
    }

    private static String colour(int rgb) {
        boolean red = (rgb >> 16 & 0xFF) > 128;
        boolean green = (rgb >> 8 & 0xFF) > 128;
        boolean blue = (rgb & 0xFF) > 128;
        return red && green && blue ? "W" : red ? "R" : green ? "G" : blue ? "B" : "?";
    }

    private static boolean contains(byte[] bytes, String text) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(text);
    }

    /** Puts an APP1 segment behind the start of the image: TIFF head, one directory with the orientation and a description. */
    private static byte[] withExif(byte[] jpeg, int orientation, ByteOrder order) {
        byte[] secret = (SECRET + "\0").getBytes(StandardCharsets.US_ASCII);
        ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 2 * 12 + 4 + secret.length).order(order);
        tiff.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x010E).putShort((short) 2).putInt(secret.length).putInt(8 + 2 + 24 + 4);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0);
        tiff.putInt(0).put(secret);
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + 10 + tiff.capacity());
        out.put(jpeg, 0, 2).put((byte) 0xFF).put((byte) 0xE1).putShort((short) (8 + tiff.capacity()));
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array()).put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    private static byte[] pngWithText(byte[] png) {
        byte[] text = ("Comment\0" + SECRET).getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DataOutputStream data = new DataOutputStream(out)) {
            data.write(png, 0, 33);
            chunk(data, "tEXt", text);
            data.write(png, 33, png.length - 33);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }

    /** A PNG of a few hundred bytes that says it is huge. */
    private static byte[] pngHead(int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DataOutputStream data = new DataOutputStream(out)) {
            data.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
            chunk(data, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8).put((byte) 2).array());
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (DeflaterOutputStream deflater = new DeflaterOutputStream(packed)) {
                deflater.write(new byte[100_000]);
            }
            chunk(data, "IDAT", packed.toByteArray());
            chunk(data, "IEND", new byte[0]);
        }
        return out.toByteArray();
    }

    private static void chunk(DataOutputStream data, String type, byte[] content) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(content);
        data.writeInt(content.length);
        data.write(name);
        data.write(content);
        data.writeInt((int) crc.getValue());
    }
}
