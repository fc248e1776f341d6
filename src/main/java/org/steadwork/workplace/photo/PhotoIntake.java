package org.steadwork.workplace.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Turns the bytes of a file into a photograph that may be kept: a JPEG made anew from the picture alone, so that place, camera, time and any
 * hidden preview stay behind. What the file calls itself counts for nothing; its first bytes choose the one reader that may try it. Size and
 * pixels are judged from the head before a single pixel is unpacked.
 */
public final class PhotoIntake {

    /** Largest file taken, in bytes. */
    public static final int MOST_BYTES = 10 * 1024 * 1024;
    /** Longest side of the picture that is kept, in pixels; a smaller one is not enlarged. */
    public static final int LONGEST_SIDE = 2000;
    /** Most bytes of the picture that is kept; a picture with so much in it that it would have more is kept coarser, then smaller. */
    public static final int MOST_KEPT_BYTES = 1_000_000;
    /** Longest side of the small one, in pixels. */
    public static final int THUMBNAIL_SIDE = 320;

    private static final long MOST_PIXELS = 60_000_000;
    private static final int MOST_SIDE = 20_000;
    private static final float QUALITY = 0.85f;
    private static final float LOWEST_QUALITY = 0.55f;
    private static final float QUALITY_STEP = 0.1f;
    private static final double SMALLER = 0.8;

    private PhotoIntake() {
    }

    /**
     * Checks, turns upright, scales and encodes anew.
     *
     * @throws RefusedPhoto when it is empty, larger than {@link #MOST_BYTES}, no JPEG or PNG, over 60 million pixels, or cannot be read to its end
     */
    public static Photo take(byte[] file) {
        if (file.length == 0) {
            throw new RefusedPhoto("The file is empty. Choose a photograph.");
        }
        if (file.length > MOST_BYTES) {
            throw new RefusedPhoto("The file has " + (file.length + 1024 * 1024 - 1) / (1024 * 1024) + " MB; at most 10 MB are taken. Make it smaller and try again.");
        }
        boolean jpeg = jpeg(file);
        if (!jpeg && !png(file)) {
            throw new RefusedPhoto("This is neither a JPEG nor a PNG picture, whatever its name says. Save it as JPEG and try again.");
        }
        BufferedImage read = read(file, jpeg ? "jpeg" : "png");
        BufferedImage upright = drawn(read, jpeg ? ExifOrientation.of(file) : ExifOrientation.UPRIGHT, LONGEST_SIDE);
        byte[] thumbnail = encoded(drawn(upright, ExifOrientation.UPRIGHT, THUMBNAIL_SIDE), QUALITY);
        BufferedImage kept = upright;
        while (true) {
            for (float quality = QUALITY; quality >= LOWEST_QUALITY; quality -= QUALITY_STEP) {
                byte[] picture = encoded(kept, quality);
                if (picture.length <= MOST_KEPT_BYTES) {
                    return new Photo(picture, thumbnail, kept.getWidth(), kept.getHeight());
                }
            }
            kept = drawn(kept, ExifOrientation.UPRIGHT, (int) (SMALLER * Math.max(kept.getWidth(), kept.getHeight())));
        }
    }

    private static boolean jpeg(byte[] file) {
        return file.length > 3 && (file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == 0xD8 && (file[2] & 0xFF) == 0xFF;
    }

    private static boolean png(byte[] file) {
        int[] signature = {0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
        for (int i = 0; i < signature.length; i++) {
            if (i >= file.length || (file[i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }

    private static BufferedImage read(byte[] file, String format) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if (!(width >= 1 && height >= 1 && width <= MOST_SIDE && height <= MOST_SIDE && (long) width * height <= MOST_PIXELS)) {
                throw new RefusedPhoto("The picture says it is " + width + " × " + height + " pixels; at most 60 million are taken. Make it smaller and try again.");
            }
            ImageReadParam param = reader.getDefaultReadParam();
            int every = Math.max(1, Math.max(width, height) / (2 * LONGEST_SIDE));
            param.setSourceSubsampling(every, every, 0, 0);
            return reader.read(0, param);
        } catch (IOException | RuntimeException e) {
            if (e instanceof RefusedPhoto refused) {
                throw refused;
            }
            throw new RefusedPhoto("The picture cannot be read to its end; the file may be damaged. Save it anew as JPEG and try again.");
        } finally {
            reader.dispose();
        }
    }

    /** Draws it upright on white, its longest side at most {@code longest}. */
    private static BufferedImage drawn(BufferedImage source, int orientation, int longest) {
        boolean turned = orientation >= 5;
        int width = turned ? source.getHeight() : source.getWidth();
        int height = turned ? source.getWidth() : source.getHeight();
        double scale = Math.min(1, longest / (double) Math.max(width, height));
        BufferedImage target = new BufferedImage(Math.max(1, (int) Math.round(width * scale)), Math.max(1, (int) Math.round(height * scale)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = target.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, target.getWidth(), target.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        pen.scale(target.getWidth() / (double) width, target.getHeight() / (double) height);
        pen.drawImage(source, upright(orientation, source.getWidth(), source.getHeight()), null);
        pen.dispose();
        return target;
    }

    /** Returns what turns a stored picture upright; {@code w}, {@code h} are its stored sides. */
    private static AffineTransform upright(int orientation, int w, int h) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }

    private static byte[] encoded(BufferedImage picture, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException e) {
            throw new IllegalStateException("A picture in memory could not be written as JPEG", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
