package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

import org.steadwork.drawing.TextWidth;

/** The title and note over the drawing; the narrow layout has no room for the note, which stands on the page. */
record Heading(List<String> title, List<String> note, boolean narrow, int width) {

    private static final int LINES = 3;

    static Heading of(DeskScene scene, Show show, int width) {
        boolean narrow = width < Sheet.NARROW;
        String suffix = switch (show) {
            case BOTH -> "";
            case PRESENT -> scene.proposal().isPresent() ? ": now" : "";
            case PROPOSED -> ": proposed";
        };
        List<String> title = TextWidth.wrap(scene.title() + suffix, narrow ? 14 : 17, width - (narrow ? 24 : 140), true);
        List<String> note = narrow || scene.note().isBlank() ? List.of() : TextWidth.wrap(scene.note(), 12, width - 2 * Sheet.MARGIN, false);
        return new Heading(first(title), first(note), narrow, width);
    }

    private static List<String> first(List<String> lines) {
        return new ArrayList<>(lines.subList(0, Math.min(LINES, lines.size())));
    }

    double height() {
        return narrow ? 41 + 17 * (title.size() - 1) : 24 + 20 * title.size() + 16 * Math.max(1, note.size());
    }

    void draw(Pen pen) {
        double y = narrow ? 20 : 30;
        for (String line : title) {
            pen.text(narrow ? 12 : Sheet.MARGIN, y, line, Type.of(narrow ? 14 : 17, Palette.INK).inBold());
            y += narrow ? 17 : 20;
        }
        y -= 1;
        for (String line : note) {
            pen.text(Sheet.MARGIN, y, line, Type.of(12, Palette.MUTED));
            y += 16;
        }
        if (!narrow) {
            pen.text(width - Sheet.MARGIN, 30, "mm, to scale", Type.of(12, Palette.MUTED).toTheLeft());
        }
    }
}
