package org.steadwork.web;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Pictures for tests, made on the spot. */
public final class TestPictures {

    private TestPictures() {
    }

    /** A picture whose top left quarter is red, top right green, bottom left blue, bottom right white. */
    public static BufferedImage quarters(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
        for (int i = 0; i < 4; i++) {
            pen.setColor(colours[i]);
            pen.fillRect(i % 2 * width / 2, i / 2 * height / 2, width - width / 2, height - height / 2);
        }
        pen.dispose();
        return picture;
    }

    public static byte[] png(int width, int height) {
        return written(quarters(width, height), "png");
    }

    public static byte[] jpeg(int width, int height) {
        return written(quarters(width, height), "jpeg");
    }

    public static byte[] written(BufferedImage picture, String format) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(picture, format, bytes)) {
                throw new IllegalStateException("No writer for " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
