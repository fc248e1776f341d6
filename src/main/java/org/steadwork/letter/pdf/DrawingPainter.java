package org.steadwork.letter.pdf;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import org.steadwork.letter.pdf.PlainDrawing.Figure;
import org.steadwork.letter.pdf.PlainDrawing.Group;
import org.steadwork.letter.pdf.PlainDrawing.Part;
import org.steadwork.letter.pdf.PlainDrawing.Words;

/**
 * Paints a plain drawing as PDF operators. Words stay words, so that a reader's search finds them; a word with a line
 * around it is a shape, since it lies under the same word without one.
 */
final class DrawingPainter {

    /** SVG's limit where an acute corner is cut off, for want of another; PDF's own is 10. */
    private static final float MITRE = 4;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final PdfContentByte page;
    private Shown shown = new Shown();

    private DrawingPainter(PdfContentByte page) {
        this.page = page;
    }

    /**
     * Paints a drawing.
     *
     * @param view its viewBox; the page is as large, and its y axis runs upwards
     */
    static void paint(Group drawing, double[] view, PdfContentByte page) {
        page.concatCTM(1, 0, 0, -1, (float) -view[0], (float) (view[1] + view[3]));
        page.setMiterLimit(MITRE);
        new DrawingPainter(page).group(drawing);
    }

    private void group(Group group) {
        boolean apart = group.transform() != null || group.clip() != null;
        Shown before = shown;
        if (apart) {
            page.saveState();
            shown = before.copy();
        }
        if (group.transform() != null) {
            AffineTransform t = group.transform();
            page.concatCTM((float) t.getScaleX(), (float) t.getShearY(), (float) t.getShearX(), (float) t.getScaleY(), (float) t.getTranslateX(), (float) t.getTranslateY());
        }
        if (group.clip() != null) {
            outline(group.clip());
            page.clip();
            page.newPath();
        }
        for (Part part : group.parts()) {
            if (part instanceof Group inner) {
                group(inner);
            } else if (part instanceof Figure figure) {
                figure(figure.shape(), figure.look());
            } else if (part instanceof Words words) {
                words(words);
            }
        }
        if (apart) {
            page.restoreState();
            shown = before;
        }
    }

    private void figure(Shape shape, DrawingLook look) {
        boolean filled = look.fill() != null;
        boolean stroked = look.stroke() != null && look.width() > 0;
        if (!filled && !stroked) {
            return;
        }
        shown.take(look, stroked);
        outline(shape);
        if (filled && stroked) {
            if (look.evenOdd()) {
                page.eoFillStroke();
            } else {
                page.fillStroke();
            }
        } else if (stroked) {
            page.stroke();
        } else if (look.evenOdd()) {
            page.eoFill();
        } else {
            page.fill();
        }
    }

    private void outline(Shape shape) {
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> page.moveTo((float) at[0], (float) at[1]);
                case PathIterator.SEG_LINETO -> page.lineTo((float) at[0], (float) at[1]);
                case PathIterator.SEG_CUBICTO -> page.curveTo((float) at[0], (float) at[1], (float) at[2], (float) at[3], (float) at[4], (float) at[5]);
                case PathIterator.SEG_QUADTO -> page.curveTo((float) (x + 2 * (at[0] - x) / 3), (float) (y + 2 * (at[1] - y) / 3),
                        (float) (at[2] + 2 * (at[0] - at[2]) / 3), (float) (at[3] + 2 * (at[1] - at[3]) / 3), (float) at[2], (float) at[3]);
                default -> page.closePath();
            }
            if (kind != PathIterator.SEG_CLOSE) {
                int end = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
                x = at[end];
                y = at[end + 1];
            }
        }
    }

    private void words(Words words) {
        DrawingLook look = words.look();
        if (words.text().isEmpty() || look.fill() == null && look.stroke() == null) {
            return;
        }
        BaseFont face = LetterFonts.face(look.bold(), look.italic());
        double width = look.anchor().equals("start") ? 0 : face.getWidthPoint(words.text(), look.fontSize());
        double x = words.x() - (look.anchor().equals("middle") ? width / 2 : width);
        if (look.stroke() != null) {
            Font outlines = LetterFonts.outlines(look.bold(), look.italic()).deriveFont(look.fontSize());
            figure(outlines.createGlyphVector(EXACT, words.text()).getOutline((float) x, (float) words.y()), look);
            return;
        }
        shown.take(look, false);
        page.beginText();
        page.setFontAndSize(face, look.fontSize());
        page.setTextMatrix(1, 0, 0, -1, (float) x, (float) words.y());
        page.showText(words.text());
        page.endText();
    }

    /** What was set so far, so that only what changes is written; at first nothing, since a form begins as its page was left. */
    private final class Shown {

        private Color fill;
        private Color stroke;
        private float width = -1;
        private int cap = -1;
        private int join = -1;
        private float[] dash;

        private Shown copy() {
            Shown copy = new Shown();
            copy.fill = fill;
            copy.stroke = stroke;
            copy.width = width;
            copy.cap = cap;
            copy.join = join;
            copy.dash = dash;
            return copy;
        }

        private void take(DrawingLook look, boolean stroked) {
            if (look.fill() != null && !look.fill().equals(fill)) {
                fill = look.fill();
                page.setColorFill(fill);
            }
            if (stroked) {
                line(look);
            }
        }

        private void line(DrawingLook look) {
            if (!look.stroke().equals(stroke)) {
                stroke = look.stroke();
                page.setColorStroke(stroke);
            }
            if (look.width() != width) {
                width = look.width();
                page.setLineWidth(width);
            }
            if (look.cap() != cap) {
                cap = look.cap();
                page.setLineCap(cap);
            }
            if (look.join() != join) {
                join = look.join();
                page.setLineJoin(join);
            }
            if (!Arrays.equals(look.dash(), dash)) {
                dash = look.dash();
                page.setLineDash(dash, 0);
            }
        }
    }
}
