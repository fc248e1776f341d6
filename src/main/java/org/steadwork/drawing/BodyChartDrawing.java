package org.steadwork.drawing;

import static org.steadwork.drawing.BodyPalette.DEEP;
import static org.steadwork.drawing.BodyPalette.INK;
import static org.steadwork.drawing.BodyPalette.MUTED;
import static org.steadwork.drawing.BodyPalette.PAPER;
import static org.steadwork.drawing.BodyPalette.SEAM;
import static org.steadwork.drawing.BodyPalette.SKIN;
import static org.steadwork.drawing.BodyPalette.WHITE;

import jakarta.inject.Singleton;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Mark;
import org.steadwork.body.SymptomKind;
import org.steadwork.body.View;
import org.steadwork.body.Zone;

/**
 * Draws the body chart as SVG text. Every id begins with a prefix (a lower-case letter, then letters, digits or hyphens; anything
 * else throws {@link IllegalArgumentException}), so that several charts may stand on one page. A mark whose zone is not on the
 * chart throws {@link IllegalArgumentException}: a chart never hides a symptom. Left and right are the patient's own.
 */
@Singleton
public final class BodyChartDrawing {

    private static final Pattern PREFIX = Pattern.compile("[a-z][a-z0-9-]*");
    private static final String FONT = "Liberation Sans, Arial, sans-serif";
    private static final double SMALL = 0.4;
    private static final int SMALL_FIGURE = 150;
    private static final int FIGURE_TOP = 46;
    private static final int FIGURE_HEIGHT = 752;

    private final BodyChart chart;
    private final BodyFigure figure;

    BodyChartDrawing(BodyChartContent content) {
        chart = content.chart();
        figure = content.figure();
    }

    /** Draws the chart whose zones can be reached by Tab and arrow keys and pressed; {@code js/body-chart.js} brings it to life. */
    public String interactive(String prefix, Collection<Mark> marks) {
        Map<String, Mark> byZone = check(prefix, marks);
        SvgMarkup out = new SvgMarkup();
        out.open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "bc", "viewBox", "0 0 " + figure.width() + " "
                + figure.height(), "role", "group", "aria-labelledby", prefix + "-t " + prefix + "-d", "data-prefix", prefix,
                "data-ramp", figure.ramp().stream().map(BodyFigure.PainStep::fill).collect(Collectors.joining(" ")),
                "data-dark-from", firstDark(), "data-skin", SKIN);
        out.open("title", "id", prefix + "-t").text("Body chart: where does it hurt?").close();
        out.open("desc", "id", prefix + "-d").text("A standing adult, front view on the left and back view on the right. Left and"
                + " right are the patient’s own sides. Arrow keys move between zones; Enter opens a zone’s row.").close();
        ground(out, figure.width(), figure.height(), PAPER);
        sideLabels(out);
        new LiveFigure(chart, figure, prefix, byZone, out).draw();
        return out.close().done();
    }

    /** Draws both views for print and letters: flat colours, no scripts, patterns or transparency. */
    public String still(String prefix, Collection<Mark> marks) {
        Map<String, Mark> byZone = check(prefix, marks);
        SvgMarkup out = picture(prefix, figure.width(), figure.height(), "Body chart", words(marks), WHITE);
        sideLabels(out);
        StillFigure still = new StillFigure(chart, figure, WHITE, 1);
        for (View view : View.values()) {
            still.draw(out, view, byZone);
        }
        return out.close().done();
    }

    /** Draws one small chart without words around it; {@code views} says which views stand side by side. */
    public String small(String prefix, Collection<Mark> marks, Set<View> views) {
        check(prefix, marks);
        SvgMarkup out = picture(prefix, SMALL_FIGURE * views.size(), smallHeight(), "Body chart", words(marks), PAPER);
        smallFigures(out, marks, views, 0, 0);
        return out.close().done();
    }

    /** Draws a row of small charts, one for each moment, from left to right; only the views that carry a mark. */
    public String strip(String prefix, List<ChartMoment> moments) {
        Set<View> views = views(moments.stream().flatMap(moment -> moment.marks().stream()).toList());
        moments.forEach(moment -> check(prefix, moment.marks()));
        int panel = SMALL_FIGURE * views.size() + 30;
        int top = 60;
        int height = top + smallHeight() + 34;
        String all = moments.stream().map(moment -> moment.heading() + ", " + moment.date() + ": " + words(moment.marks()))
                .collect(Collectors.joining(". "));
        SvgMarkup out = picture(prefix, Math.max(1, moments.size()) * panel, height, "Body charts, one for each report", all,
                PAPER);
        for (int i = 0; i < moments.size(); i++) {
            ChartMoment moment = moments.get(i);
            double middle = (i + 0.5) * panel;
            out.open("text", "x", middle, "y", 24, "font-size", 15, "font-weight", "700", "text-anchor", "middle", "fill", INK)
                    .text(moment.heading()).close();
            out.open("text", "x", middle, "y", 44, "font-size", 13, "text-anchor", "middle", "fill", MUTED)
                    .text(moment.date()).close();
            smallFigures(out, moment.marks(), views, i * panel + 15.0, top);
        }
        out.open("text", "x", 15, "y", height - 12, "font-size", 12, "fill", MUTED).text(sideNote(views)).close();
        return out.close().done();
    }

    /** Draws the scale of pain: eleven cells with their number. */
    public String ramp() {
        SvgMarkup out = new SvgMarkup().open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "bc-ramp", "viewBox",
                "0 0 320 28", "role", "img", "aria-label", "Colours of pain from 0, lightest, to 10, darkest", "font-family", FONT);
        for (int pain = 0; pain <= 10; pain++) {
            BodyFigure.PainStep step = figure.ramp().get(pain);
            out.empty("rect", "x", 1 + pain * 29.0, "y", 1, "width", 29, "height", 26, "fill", step.fill(), "stroke", SEAM);
            out.open("text", "x", 15.5 + pain * 29.0, "y", 19, "font-size", 14, "font-weight", "700", "text-anchor", "middle",
                    "fill", step.dark() ? PAPER : INK).text(String.valueOf(pain)).close();
        }
        return out.close().done();
    }

    /** Draws a small sample of a kind of symptom; null is "kind not said". */
    public String swatch(SymptomKind kind) {
        SvgMarkup out = new SvgMarkup().open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "bc-swatch", "viewBox",
                "0 0 34 24", "width", 34, "height", 24, "aria-hidden", "true");
        // its own ground, or a dark edge would be lost on a dark page
        out.empty("rect", "width", 34, "height", 24, "fill", PAPER);
        String box = "M1 1C12 1 22 1 33 1C33 8 33 16 33 23C22 23 12 23 1 23C1 16 1 8 1 1Z";
        out.empty("path", "d", box, "fill", figure.ramp().get(4).fill(), "stroke", kind == null ? INK : SEAM, "stroke-width",
                kind == null ? 2 : 1, "stroke-dasharray", kind == null ? "6 5" : null);
        Hatch hatch = new Hatch(box);
        if (kind == SymptomKind.ACHE) {
            out.empty("path", "d", hatch.lines(-45, 8), "stroke", DEEP, "stroke-width", 1.5);
        } else if (kind == SymptomKind.STIFFNESS) {
            out.empty("path", "d", hatch.lines(0, 9), "stroke", DEEP, "stroke-width", 2.4);
        } else if (kind == SymptomKind.TINGLING_OR_NUMB) {
            out.empty("path", "d", hatch.dots(10, 1.9), "fill", DEEP);
        }
        return out.close().done();
    }

    /** Returns the marks in words, most pain first, not asked last: "Low back: pain 5 of 10, ache; …". */
    public String words(Collection<Mark> marks) {
        if (marks.isEmpty()) {
            return "No zone is marked";
        }
        Comparator<Mark> mostFirst = Comparator.comparing(Mark::pain, Comparator.nullsFirst(Comparator.naturalOrder()));
        return marks.stream().sorted(mostFirst.reversed()).map(mark -> chart.zone(mark.zone()).label() + ": " + mark.words())
                .collect(Collectors.joining("; "));
    }

    /** Returns the views that carry a mark, the back view when none does. */
    public Set<View> views(Collection<Mark> marks) {
        Set<View> views = EnumSet.noneOf(View.class);
        marks.forEach(mark -> views.add(chart.zone(mark.zone()).view()));
        return views.isEmpty() ? EnumSet.of(View.BACK) : views;
    }

    private Map<String, Mark> check(String prefix, Collection<Mark> marks) {
        if (!PREFIX.matcher(prefix).matches()) {
            throw new IllegalArgumentException("A prefix must be like body-1, but was '" + prefix + "'");
        }
        marks.forEach(mark -> chart.zone(mark.zone()));
        return StillFigure.byZone(marks);
    }

    private int firstDark() {
        int pain = 0;
        while (pain <= 10 && !figure.ramp().get(pain).dark()) {
            pain++;
        }
        return pain;
    }

    private SvgMarkup picture(String prefix, int width, int height, String title, String words, String ground) {
        SvgMarkup out = new SvgMarkup().open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "bc", "viewBox",
                "0 0 " + width + " " + height, "width", width, "height", height, "role", "img", "aria-labelledby",
                prefix + "-t " + prefix + "-d", "font-family", FONT);
        out.open("title", "id", prefix + "-t").text(title).close();
        out.open("desc", "id", prefix + "-d").text(words).close();
        ground(out, width, height, ground);
        return out;
    }

    private static void ground(SvgMarkup out, int width, int height, String colour) {
        out.empty("rect", "class", "bc-ground", "width", width, "height", height, "fill", colour);
    }

    private void smallFigures(SvgMarkup out, Collection<Mark> marks, Set<View> views, double left, double top) {
        StillFigure small = new StillFigure(chart, figure, SKIN, 1.6);
        double middle = left + SMALL_FIGURE / 2.0;
        for (View view : View.values()) {
            if (views.contains(view)) {
                double x = middle - figure.outlines().get(view).middle() * SMALL;
                out.open("g", "transform", "translate(" + SvgMarkup.number(x) + " "
                        + SvgMarkup.number(top + 4 - FIGURE_TOP * SMALL) + ") scale(" + SMALL + ")");
                small.draw(out, view, StillFigure.byZone(marks));
                out.close();
                middle += SMALL_FIGURE;
            }
        }
    }

    private static int smallHeight() {
        return (int) Math.ceil(FIGURE_HEIGHT * SMALL) + 8;
    }

    /** Says which side of a small drawing is the patient's right. */
    public String sideNote(Set<View> views) {
        return views.size() == 2 ? "Front: patient’s right is on the left. Back: on the right."
                : views.contains(View.BACK) ? "Seen from behind: patient’s right is on the right."
                : "Seen from the front: patient’s right is on the left.";
    }

    private void sideLabels(SvgMarkup out) {
        out.open("g", "aria-hidden", "true", "fill", INK);
        for (View view : View.values()) {
            int middle = figure.outlines().get(view).middle();
            out.open("text", "class", "bc-title", "x", middle, "y", 27, "font-size", 21, "font-weight", "600", "text-anchor",
                    "middle").text(view.label()).close();
            side(out, middle - 154, "start", view == View.FRONT ? "right" : "left");
            side(out, middle + 154, "end", view == View.FRONT ? "left" : "right");
        }
        out.close();
    }

    private static void side(SvgMarkup out, int x, String anchor, String side) {
        out.open("text", "class", "bc-side", "x", x, "y", 72, "font-size", 17, "text-anchor", anchor, "fill", MUTED)
                .text("Patient’s").open("tspan", "x", x, "dy", "1.25em", "font-weight", "700").text(side).close().close();
    }
}
