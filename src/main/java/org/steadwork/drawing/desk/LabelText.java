package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

import org.steadwork.drawing.TextWidth;

/** A label broken into lines: the head in bold, then what it means now and proposed, each with its sign. */
record LabelText(List<Line> lines, double size) {

    record Line(String text, boolean head, boolean proposed, State sign) {
    }

    static LabelText of(Label label, Show show, double width, double size) {
        List<Line> lines = new ArrayList<>();
        for (String text : TextWidth.wrap(label.head(), size, width, true)) {
            lines.add(new Line(text, true, false, null));
        }
        if (show.present()) {
            add(lines, "now " + label.now(), false, label.nowState(), width, size);
        }
        if (show.proposed()) {
            add(lines, "proposed " + label.then(), true, label.thenState(), width, size);
        }
        return new LabelText(lines, size);
    }

    private static void add(List<Line> lines, String text, boolean proposed, State sign, double width, double size) {
        for (String line : TextWidth.wrap(text, size - .5, width - 16, false)) {
            lines.add(new Line(line, false, proposed, sign));
            sign = null;
        }
    }

    double height() {
        return lines.size() * (size + 3.5) + 8;
    }

    /** Draws the lines downwards and returns where the last one stands. */
    double draw(Pen pen, double x, double top) {
        double y = top;
        for (Line line : lines) {
            y += size + 3.5;
            if (line.head()) {
                pen.text(x, y, line.text(), Type.of(size + .5, Palette.INK).inBold());
                continue;
            }
            if (line.sign() != null) {
                Marker.draw(pen, x + 5, y - size * .34, line.sign(), 4.4);
            }
            pen.text(x + 15, y, line.text(), Type.of(size - .5, line.proposed() ? Palette.PLUM : Palette.INK));
        }
        return y;
    }
}
