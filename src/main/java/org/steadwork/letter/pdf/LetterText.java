package org.steadwork.letter.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.xhtmlrenderer.extend.FontContext;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.FSFont;

/** Measures words by a table of widths a face; the face itself looks each character up in a map, and a page is measured more than once. */
final class LetterText extends ITextTextRenderer {

    /** Latin, Greek, Cyrillic and Hebrew: what the faces carry, but for signs, which the face is asked for. */
    private static final int TABLE = 0x600;

    /** As in the library's own measuring: a width this little above a whole number is that number. */
    private static final float DELTA = 0.01f;
    private static final Map<BaseFont, short[]> WIDTHS = new ConcurrentHashMap<>();

    @Override
    public int getWidth(FontContext context, FSFont font, String words) {
        BaseFont face = ((ITextFSFont) font).getFontDescription().getFont();
        short[] widths = WIDTHS.computeIfAbsent(face, LetterText::table);
        int sum = 0;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            if (Character.isSurrogate(c)) {
                return super.getWidth(context, font, words);
            }
            sum += c < TABLE ? widths[c] : face.getWidth(c);
        }
        float width = sum * 0.001f * font.getSize2D();
        return width - Math.floor(width) < DELTA ? (int) width : (int) Math.ceil(width);
    }

    private static short[] table(BaseFont face) {
        short[] widths = new short[TABLE];
        for (int c = 0; c < TABLE; c++) {
            widths[c] = (short) face.getWidth(c);
        }
        return widths;
    }
}
