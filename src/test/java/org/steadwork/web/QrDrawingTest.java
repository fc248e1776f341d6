package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.steadwork.account.OpaqueToken;

/** The drawn code, painted module by module and read by a decoder. */
class QrDrawingTest {

    private static final int PIXELS = 4;

    @Test
    void theDrawingReadsAsTheAddress() throws ReaderException {
        String address = "https://clinic.example/own/" + OpaqueToken.fresh();
        assertEquals(address, read(QrDrawing.svg(address, "A code")));
    }

    private static String read(String svg) throws ReaderException {
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) ").matcher(svg);
        if (!box.find()) {
            throw NotFoundException.getNotFoundInstance();
        }
        int side = Integer.parseInt(box.group(1)) * PIXELS;
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xFFFFFF);
        Matcher module = Pattern.compile("M(\\d+) (\\d+)h1").matcher(svg);
        while (module.find()) {
            int left = Integer.parseInt(module.group(1)) * PIXELS;
            int top = Integer.parseInt(module.group(2)) * PIXELS;
            for (int y = top; y < top + PIXELS; y++) {
                Arrays.fill(pixels, y * side + left, y * side + left + PIXELS, 0);
            }
        }
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)))).getText();
    }
}
