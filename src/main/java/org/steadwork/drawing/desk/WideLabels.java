package org.steadwork.drawing.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.steadwork.drawing.Spread;

/** Sets the labels in two columns beside the drawing, spread so that none overlap, with leaders. */
final class WideLabels {

    private static final double SIZE = 12.5;

    private final Sheet sheet;
    private final Pen pen;
    private final Map<Label.Topic, Point> anchors;

    WideLabels(Sheet sheet, Map<Label.Topic, Point> anchors) {
        this.sheet = sheet;
        pen = sheet.pen();
        this.anchors = anchors;
    }

    /** Draws labels, posture and legend and returns the height of the whole drawing. */
    int draw(List<Label> labels) {
        double lowest = Math.max(column(labels, true), column(labels, false));
        double y = Math.max(sheet.frame().floorY() + 46, lowest + 24);
        if (sheet.show().present()) {
            String words = PostureWords.of(sheet.stage()).map(w -> "As drawn now (worked out, not observed): " + w + ".").orElse("");
            pen.text(Sheet.MARGIN, y, words, Type.of(12, Palette.MUTED).inItalic());
        }
        double last = Legend.draw(pen, Sheet.MARGIN, y + 24, sheet.width() - Sheet.MARGIN, 11.5, sheet.show(), DeskView.anyMissing(sheet.stage()));
        return (int) (last + 22);
    }

    private double column(List<Label> labels, boolean left) {
        List<Label> own = labels.stream().filter(l -> l.topic().left == left && anchors.containsKey(l.topic()))
                .sorted(Comparator.comparingDouble(l -> anchors.get(l.topic()).y())).toList();
        List<LabelText> texts = own.stream().map(l -> LabelText.of(l, sheet.show(), Sheet.COLUMN, SIZE)).toList();
        double[] middles = Spread.middles(own.stream().mapToDouble(l -> anchors.get(l.topic()).y()).toArray(),
                texts.stream().mapToDouble(LabelText::height).toArray(), sheet.top() + 16, sheet.frame().floorY() + 20, 10);
        double x = left ? Sheet.MARGIN : sheet.width() - Sheet.MARGIN - Sheet.COLUMN;
        double lowest = 0;
        for (int i = 0; i < own.size(); i++) {
            double half = texts.get(i).height() / 2;
            leader(left ? x + 210 : x - 8, left ? 12 : -12, middles[i], anchors.get(own.get(i).topic()));
            double rule = left ? x + 210 : x - 8;
            pen.line(new Point(rule, middles[i] - half + 3), new Point(rule, middles[i] + half - 3),
                    Ink.line(own.get(i).leading(sheet.show()).colour, 2));
            texts.get(i).draw(pen, x, middles[i] - half);
            lowest = Math.max(lowest, middles[i] + half);
        }
        return lowest;
    }

    private void leader(double from, double out, double y, Point anchor) {
        pen.path(Pen.outline(List.of(new Point(from, y), new Point(from + out, y), anchor)), Ink.line(Palette.LEADER, .9));
        pen.circle(anchor, 2.2, Ink.filled(Palette.LEADER));
    }
}
