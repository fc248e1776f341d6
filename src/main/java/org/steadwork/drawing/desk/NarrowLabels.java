package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.steadwork.drawing.Spread;
import org.steadwork.drawing.TextWidth;

/** Sets numbers on the drawing and the labels as a list under it, the worst first. */
final class NarrowLabels {

    private static final double SIZE = 12;

    private final Sheet sheet;
    private final Pen pen;
    private final Map<Label.Topic, Point> anchors;

    NarrowLabels(Sheet sheet, Map<Label.Topic, Point> anchors) {
        this.sheet = sheet;
        pen = sheet.pen();
        this.anchors = anchors;
    }

    /** Draws numbers, legend, list and posture and returns the height of the whole drawing. */
    int draw(List<Label> labels) {
        List<Label> order = new ArrayList<>(labels.stream().filter(l -> anchors.containsKey(l.topic())).toList());
        order.sort(Comparator.comparing((Label l) -> l.leading(sheet.show())).reversed());
        Map<Label.Topic, Integer> numbers = new EnumMap<>(Label.Topic.class);
        order.forEach(l -> numbers.put(l.topic(), numbers.size() + 1));
        column(order, numbers, true);
        column(order, numbers, false);
        double y = Legend.draw(pen, 12, sheet.frame().floorY() + 24, sheet.width() - 8, 11, sheet.show(), DeskView.anyMissing(sheet.stage())) + 16;
        for (Label label : order) {
            number(20, y + 11, numbers.get(label.topic()), label);
            y = LabelText.of(label, sheet.show(), sheet.width() - 52, SIZE).draw(pen, 36, y) + 7;
        }
        if (sheet.show().present()) {
            String words = PostureWords.of(sheet.stage()).map(w -> "As drawn now (worked out, not observed): " + w + ".").orElse("");
            for (String line : TextWidth.wrap(words, 11, sheet.width() - 24, false)) {
                y += 14;
                pen.text(12, y, line, Type.of(11, Palette.MUTED).inItalic());
            }
        }
        return (int) (y + 14);
    }

    private void column(List<Label> order, Map<Label.Topic, Integer> numbers, boolean left) {
        List<Label> own = order.stream().filter(l -> l.topic().left == left)
                .sorted(Comparator.comparingDouble(l -> anchors.get(l.topic()).y())).toList();
        double[] heights = own.stream().mapToDouble(l -> 18).toArray();
        double[] middles = Spread.middles(own.stream().mapToDouble(l -> anchors.get(l.topic()).y()).toArray(), heights,
                sheet.top() + 4, sheet.frame().floorY() + 4, 4);
        double x = left ? 12 : sheet.width() - 12;
        for (int i = 0; i < own.size(); i++) {
            Point anchor = anchors.get(own.get(i).topic());
            pen.line(new Point(x, middles[i]), anchor, Ink.line(Palette.LEADER, .8));
            pen.circle(anchor, 1.8, Ink.filled(Palette.LEADER));
            number(x, middles[i], numbers.get(own.get(i).topic()), own.get(i));
        }
    }

    private void number(double x, double y, int number, Label label) {
        pen.circle(new Point(x, y), 8.5, Ink.line(label.leading(sheet.show()).colour, 1.6).fill(Palette.PAPER));
        pen.text(x, y + 4, String.valueOf(number), Type.of(11.5, Palette.INK).inBold().centred());
    }
}
