package org.steadwork.web;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** Draws an address as a QR code, ISO/IEC 18004, in black on white with the quiet zone of four modules. */
public final class QrDrawing {

    private static final int QUIET_ZONE = 4;

    private QrDrawing() {
    }

    /** @param title says what the code is, for those who do not see it */
    public static String svg(String address, String title) {
        try {
            BitMatrix code = new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0,
                    Map.of(EncodeHintType.MARGIN, QUIET_ZONE, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M));
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < code.getHeight(); y++) {
                for (int x = 0; x < code.getWidth(); x++) {
                    if (code.get(x, y)) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"200\" height=\"200\" role=\"img\" aria-label=\"%s\" shape-rendering=\"crispEdges\">"
                    .formatted(code.getWidth(), code.getHeight(), title) + "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/><path fill=\"#000\" d=\"" + path + "\"/></svg>";
        } catch (WriterException e) {
            throw new IllegalStateException("An address of this length always fits into a code", e);
        }
    }
}
