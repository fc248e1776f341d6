package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.drawing.SvgText;

/**
 * Draws an exercise from joint angles: numbered frames, what moves tinted and with an arrow, seconds to hold. The picture
 * says nothing by colour alone and never stands without the exercise's steps, which are its text alternative. 240 by 200
 * units; show it 120 pixels wide or wider.
 */
public final class ExerciseFigure {

    private final FigureData figure;
    private final List<Skeleton> skeletons = new ArrayList<>();

    private ExerciseFigure(FigureData figure) {
        this.figure = figure;
        figure.poses().forEach(pose -> skeletons.add(Skeleton.of(pose)));
    }

    /**
     * Reads a figure's data.
     *
     * @param key     the exercise it belongs to
     * @param presets start positions by name
     * @param data    name, frames (joint angles in degrees, places in units of stature = 100), props, arrows
     * @throws IllegalArgumentException naming what is wrong: an unknown preset, anchor, view or prop, a value of the wrong kind
     */
    public static ExerciseFigure of(String key, Map<String, ?> presets, Map<String, ?> data) {
        return new ExerciseFigure(FigureData.of(key, presets, data));
    }

    /** What is doubtful about the poses: joints beyond a healthy range, places out of reach, weight beside the feet. */
    public List<String> doubts() {
        return PoseCheck.of(figure, skeletons);
    }

    /** The same figure with other seconds to hold, {@code 12} or {@code 10-15}; null for none. */
    public ExerciseFigure held(String seconds) {
        Values values = seconds == null ? figure.values().without("hold") : figure.values().with("hold", seconds);
        return new ExerciseFigure(new FigureData(figure.key(), values, figure.poses()));
    }

    /** True when the drawing shows the left side of the body doing it. */
    public boolean showsLeft() {
        return figure.values().text("shows", "right").equals("left");
    }

    /** Draws the figure as an SVG document without style or script. */
    public String svg() {
        return svg(false);
    }

    /** Draws the figure for the other side of the body; numbers stay readable. */
    public String mirrored() {
        return svg(true);
    }

    List<Skeleton> skeletons() {
        return skeletons;
    }

    private String svg(boolean mirrored) {
        Layout layout = new Layout(figure, skeletons);
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 200\" width=\"240\" height=\"200\""
                + " role=\"img\" aria-label=\"" + SvgText.escape(figure.values().text("name", figure.key())) + "\">");
        for (int i = 0; i < figure.frames(); i++) {
            svg.append("<g>").append(frame(i, layout, mirrored)).append("</g>");
        }
        return svg.append(layout.rules()).append("</svg>\n").toString();
    }

    private String frame(int i, Layout layout, boolean mirrored) {
        Panel panel = layout.panel(i, skeletons.get(i));
        String drawn = scene(i, panel, layout.cell(i));
        Layout.Cell clip = layout.clip(i, panel);
        if (clip != null) {
            String id = "clip-" + figure.key() + "-" + i;
            drawn = "<defs>" + Svg.rect(id, clip.x(), clip.y(), clip.width(), clip.height()) + "</defs><g clip-path=\"url(#" + id + ")\">" + drawn + "</g>";
        }
        ArrowDrawing arrows = new ArrowDrawing(panel, skeletons.get(i).joints(), figure.poses(), i);
        for (Values arrow : figure.arrows(i)) {
            drawn += arrows.draw(arrow);
        }
        if (mirrored) {
            Layout.Cell cell = layout.cell(i);
            drawn = "<g transform=\"translate(" + Svg.num(2 * cell.x() + cell.width()) + " 0) scale(-1 1)\">" + drawn + "</g>";
        }
        return drawn + number(i, layout) + hold(i, layout);
    }

    /** Props behind, the dashed start position, the body with what lies under its limbs, props in front. */
    private String scene(int i, Panel panel, Layout.Cell cell) {
        Joints joints = skeletons.get(i).joints();
        PropDrawing props = new PropDrawing(panel, joints);
        StringBuilder behind = new StringBuilder();
        StringBuilder front = new StringBuilder();
        Map<String, String> under = new HashMap<>();
        for (Values prop : figure.props(i)) {
            if (prop.text("type", "").equals("floor") && panel.camera().isLevel()) {
                behind.append(floor(panel, cell));
            } else if (prop.flag("front", false)) {
                front.append(props.draw(prop));
            } else if (prop.has("under")) {
                under.merge(prop.text("under", ""), props.draw(prop), String::concat);
            } else {
                behind.append(props.draw(prop));
            }
        }
        String ghost = figure.hasGhost(i) ? new BodyDrawing(panel, figure, null).ghost(skeletons.get(0)) : "";
        String body = new BodyDrawing(panel, figure, figure.poses().get(i)).draw(skeletons.get(i), under);
        return behind + ghost + body + front;
    }

    private static String floor(Panel panel, Layout.Cell cell) {
        return "<path d=\"M" + Svg.xy(cell.x() + 1, panel.originY() + panel.lineWidth() * .5) + "H" + Svg.num(cell.x() + cell.width() - 1)
                + "\" stroke=\"" + Svg.GREY_LINE + "\" stroke-width=\"2.4\" stroke-linecap=\"round\"/>";
    }

    private static String number(int i, Layout layout) {
        Point at = layout.numberAt(i);
        return Svg.circle(at, 10, "fill=\"" + Svg.INK + "\"") + Svg.text(at.plus(0, 5.2), 15, Svg.WHITE, "middle", Integer.toString(i + 1));
    }

    /** Two bars and the seconds. */
    private String hold(int i, Layout layout) {
        Values values = figure.values();
        if (!values.has("hold") || i + 1 != (int) values.number("hold_in", figure.frames())) {
            return "";
        }
        String seconds = values.text("hold", "").replace('-', '–') + " s";
        double width = 20 + 7.6 * seconds.length();
        Point at = layout.holdAt(i, width);
        return String.format(Locale.ROOT, "<g><rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"20\" rx=\"10\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.6\"/>"
                + "<path d=\"M%sv9M%sv9\" stroke=\"%s\" stroke-width=\"2.6\"/>%s</g>", Svg.num(at.x()), Svg.num(at.y()), Svg.num(width),
                Svg.WHITE, Svg.PLUM, Svg.xy(at.x() + 9, at.y() + 5.5), Svg.xy(at.x() + 13.5, at.y() + 5.5), Svg.PLUM,
                Svg.text(at.plus(18, 15), 13.5, Svg.PLUM, "", seconds));
    }
}
