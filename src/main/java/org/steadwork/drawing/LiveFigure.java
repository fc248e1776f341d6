package org.steadwork.drawing;

import static org.steadwork.drawing.BodyPalette.DEEP;
import static org.steadwork.drawing.BodyPalette.HINT;
import static org.steadwork.drawing.BodyPalette.INK;
import static org.steadwork.drawing.BodyPalette.PAPER;
import static org.steadwork.drawing.BodyPalette.SEAM;
import static org.steadwork.drawing.BodyPalette.SKIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Direction;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.View;
import org.steadwork.body.Zone;
import org.steadwork.drawing.BodyFigure.Outline;

/**
 * Draws the chart whose zones can be pressed. Every pattern, edge and number that a zone may need is in the drawing and hidden
 * with {@code display="none"}, so that the script only switches attributes and holds no geometry and no colour.
 */
final class LiveFigure {

    private final BodyChart chart;
    private final BodyFigure figure;
    private final String prefix;
    private final Map<String, Mark> marks;
    private final SvgMarkup out;

    LiveFigure(BodyChart chart, BodyFigure figure, String prefix, Map<String, Mark> marks, SvgMarkup out) {
        this.chart = chart;
        this.figure = figure;
        this.prefix = prefix;
        this.marks = marks;
        this.out = out;
    }

    void draw() {
        out.open("defs");
        patterns("ink", DEEP);
        patterns("paper", PAPER);
        chart.zones().forEach(zone -> out.empty("path", "id", shape(zone), "d", zone.path()));
        out.close();
        hitEdges();
        // one stop for Tab: the first marked zone, or the first zone of all
        String stop = chart.zones().stream().map(Zone::key).filter(marks::containsKey).findFirst()
                .orElse(chart.zones().get(0).key());
        for (View view : View.values()) {
            out.open("g", "role", "group", "aria-label", view.label() + " view");
            chart.zones(view).forEach(zone -> zone(zone, zone.key().equals(stop)));
            out.close();
            lines(figure.outlines().get(view));
        }
        chart.zones().forEach(this::disc);
    }

    private String shape(Zone zone) {
        return prefix + "-p-" + zone.key();
    }

    private void patterns(String tone, String colour) {
        out.open("pattern", "id", prefix + "-tingling_or_numb-" + tone, "width", 10, "height", 10, "patternUnits",
                "userSpaceOnUse", "patternTransform", "rotate(45)");
        out.empty("circle", "cx", 5, "cy", 5, "r", 1.9, "fill", colour).close();
        out.open("pattern", "id", prefix + "-ache-" + tone, "width", 8, "height", 8, "patternUnits", "userSpaceOnUse",
                "patternTransform", "rotate(45)");
        out.empty("path", "d", "M4 -1V9", "stroke", colour, "stroke-width", 1.5, "fill", "none").close();
        out.open("pattern", "id", prefix + "-stiffness-" + tone, "width", 9, "height", 9, "patternUnits", "userSpaceOnUse");
        out.empty("path", "d", "M0 4.5H9", "stroke", colour, "stroke-width", 2.4, "fill", "none").close();
    }

    /** Invisible edges below the zones, thin ones first, so that a tap just beside a hand still finds it. */
    private void hitEdges() {
        out.open("g", "aria-hidden", "true");
        chart.zones().stream().sorted(Comparator.comparingDouble(Zone::hitStroke)).forEach(zone -> out.empty("use", "class",
                "bc-hit", "data-hit", zone.key(), "href", "#" + shape(zone), "fill", "none", "stroke", "transparent",
                "stroke-width", zone.hitStroke(), "pointer-events", "stroke"));
        out.close();
    }

    private void zone(Zone zone, boolean stop) {
        Mark mark = marks.get(zone.key());
        String place = zone.label() + ", " + zone.view().key() + " view";
        String label = place + ": " + (mark == null ? "no mark" : mark.words());
        out.open("g", "class", "bc-zone", "id", prefix + "-" + zone.key(), "role", "button", "tabindex", stop ? 0 : -1,
                "aria-label", label, "data-zone", zone.key(), "data-region", zone.region().key(), "data-order", zone.order(),
                "data-label", zone.label(), "data-place", place, "data-up", next(zone, Direction.UP), "data-down", next(zone,
                Direction.DOWN), "data-left", next(zone, Direction.LEFT), "data-right", next(zone, Direction.RIGHT));
        out.open("title").text(label).close();
        boolean dark = mark != null && mark.pain() != null && figure.ramp().get(mark.pain()).dark();
        String fill = mark == null || mark.pain() == null ? SKIN : figure.ramp().get(mark.pain()).fill();
        out.empty("use", "class", "bc-area", "href", "#" + shape(zone), "fill", fill, "stroke", SEAM, "stroke-width", 1.4);
        for (SymptomKind kind : List.of(SymptomKind.ACHE, SymptomKind.STIFFNESS, SymptomKind.TINGLING_OR_NUMB)) {
            out.empty("use", "class", "bc-kind", "data-kind", kind.key(), "href", "#" + shape(zone), "fill",
                    "url(#" + prefix + "-" + kind.key() + "-" + (dark ? "paper" : "ink") + ")", "pointer-events", "none",
                    "display", mark != null && mark.kinds().contains(kind) ? null : "none");
        }
        out.open("clipPath", "id", prefix + "-c-" + zone.key()).empty("use", "href", "#" + shape(zone)).close();
        out.open("g", "clip-path", "url(#" + prefix + "-c-" + zone.key() + ")", "fill", "none", "pointer-events", "none");
        out.empty("use", "class", "bc-unsaid", "href", "#" + shape(zone), "stroke", dark ? PAPER : INK, "stroke-width", 5,
                "stroke-dasharray", "7 6", "display", mark != null && mark.kindNotSaid() ? null : "none");
        out.empty("use", "class", "bc-ring bc-ring--halo", "href", "#" + shape(zone));
        out.empty("use", "class", "bc-ring", "href", "#" + shape(zone));
        out.close().close();
    }

    private static String next(Zone zone, Direction direction) {
        return zone.neighbours().get(direction);
    }

    private void lines(Outline outline) {
        out.open("g", "aria-hidden", "true", "fill", "none", "stroke", INK, "stroke-width", 1.5, "stroke-linejoin", "round",
                "stroke-linecap", "round", "pointer-events", "none");
        outline.hints().forEach(hint -> out.empty("path", "class", "bc-hint", "data-in", hint.zone(), "d", hint.path(),
                "stroke", HINT, "stroke-width", 1, "vector-effect", "non-scaling-stroke", "display",
                marks.containsKey(hint.zone()) ? "none" : null));
        Stream.concat(outline.chin().stream(), Stream.of(outline.path())).forEach(path -> out.empty("path", "class", "bc-line",
                "d", path, "vector-effect", "non-scaling-stroke"));
        out.close();
    }

    private void disc(Zone zone) {
        Mark mark = marks.get(zone.key());
        boolean asked = mark != null && mark.pain() != null;
        out.open("g", "class", "bc-mark", "data-mark", zone.key(), "aria-hidden", "true", "pointer-events", "none", "display",
                mark == null ? "none" : null);
        out.empty("circle", "cx", zone.anchor().x(), "cy", zone.anchor().y(), "r", 15.5, "fill", PAPER, "stroke", INK,
                "stroke-width", 1.3, "stroke-dasharray", asked ? null : "4 3");
        out.open("text", "x", zone.anchor().x(), "y", zone.anchor().y() + 7.1, "font-size", 20, "font-weight", "700",
                "text-anchor", "middle", "fill", INK).text(asked ? mark.pain().toString() : "?").close();
        out.close();
    }
}
