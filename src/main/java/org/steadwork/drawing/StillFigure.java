package org.steadwork.drawing;

import static org.steadwork.drawing.BodyPalette.DEEP;
import static org.steadwork.drawing.BodyPalette.HINT;
import static org.steadwork.drawing.BodyPalette.INK;
import static org.steadwork.drawing.BodyPalette.PAPER;
import static org.steadwork.drawing.BodyPalette.SEAM;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.steadwork.drawing.BodyFigure.Hint;
import org.steadwork.drawing.BodyFigure.Outline;

/** Draws one view with its marks for print, letters and small strips: flat colours, no ids, no patterns, no clips. */
final class StillFigure {

    private final BodyChart chart;
    private final BodyFigure figure;
    private final String ground;
    private final double coarseness;

    /**
     * Prepares figures.
     *
     * @param ground     fill of a zone without a mark
     * @param coarseness 1 at full size; larger makes lines, dots and numbers larger for a figure that is drawn small
     */
    StillFigure(BodyChart chart, BodyFigure figure, String ground, double coarseness) {
        this.chart = chart;
        this.figure = figure;
        this.ground = ground;
        this.coarseness = coarseness;
    }

    static Map<String, Mark> byZone(Collection<Mark> marks) {
        Map<String, Mark> byZone = new LinkedHashMap<>();
        marks.forEach(mark -> byZone.put(mark.zone(), mark));
        return byZone;
    }

    void draw(SvgMarkup out, View view, Map<String, Mark> marks) {
        for (Zone zone : chart.zones(view)) {
            area(out, zone, marks.get(zone.key()));
        }
        Outline outline = figure.outlines().get(view);
        for (Hint hint : outline.hints()) {
            if (!marks.containsKey(hint.zone())) {
                line(out, hint.path(), HINT, 1.2);
            }
        }
        outline.chin().ifPresent(chin -> line(out, chin, INK, 2));
        line(out, outline.path(), INK, 2);
        for (Zone zone : chart.zones(view)) {
            if (marks.containsKey(zone.key())) {
                disc(out, zone, marks.get(zone.key()));
            }
        }
    }

    private void area(SvgMarkup out, Zone zone, Mark mark) {
        String fill = mark == null || mark.pain() == null ? ground : figure.ramp().get(mark.pain()).fill();
        out.empty("path", "d", zone.path(), "fill", fill, "stroke", SEAM, "stroke-width", 1.2, "stroke-linejoin", "round");
        if (mark == null) {
            return;
        }
        boolean dark = mark.pain() != null && figure.ramp().get(mark.pain()).dark();
        String pattern = dark ? PAPER : DEEP;
        Hatch hatch = new Hatch(zone.path());
        for (SymptomKind kind : mark.kinds()) {
            switch (kind) {
                case ACHE -> out.empty("path", "d", hatch.lines(-45, 8 * coarseness), "fill", "none", "stroke", pattern,
                        "stroke-width", 1.5 * coarseness);
                case STIFFNESS -> out.empty("path", "d", hatch.lines(0, 9 * coarseness), "fill", "none", "stroke", pattern,
                        "stroke-width", 2.4 * coarseness);
                case TINGLING_OR_NUMB -> out.empty("path", "d", hatch.dots(10 * coarseness, 1.9 * coarseness), "fill", pattern);
                case SHARP_OR_BURNING -> { /* the fill itself says it */ }
            }
        }
        if (mark.kindNotSaid()) {
            out.empty("path", "d", zone.path(), "fill", "none", "stroke", dark ? PAPER : INK, "stroke-width", 3 * coarseness,
                    "stroke-dasharray", "7 6");
        }
    }

    private void disc(SvgMarkup out, Zone zone, Mark mark) {
        double r = 15.5 * coarseness;
        double size = 20 * coarseness;
        out.empty("circle", "cx", zone.anchor().x(), "cy", zone.anchor().y(), "r", r, "fill", PAPER, "stroke", INK,
                "stroke-width", 1.3 * coarseness, "stroke-dasharray", mark.pain() == null ? "4 3" : null);
        out.open("text", "x", zone.anchor().x(), "y", zone.anchor().y() + size * 0.355, "font-size", size, "font-weight", "700",
                "text-anchor", "middle", "fill", INK).text(mark.pain() == null ? "?" : mark.pain().toString()).close();
    }

    private static void line(SvgMarkup out, String path, String colour, double width) {
        out.empty("path", "d", path, "fill", "none", "stroke", colour, "stroke-width", width, "stroke-linejoin", "round",
                "stroke-linecap", "round");
    }
}
