package org.steadwork.drawing.desk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.drawing.SvgText;

/**
 * A side view of a person at a desk, to scale: the present state in dashed outline, the proposed one filled, target bands,
 * deviations in mm, each state told by word and shape as well as by colour. The posture is worked out from the numbers,
 * not observed: a picture that explains, no finding by itself.
 *
 * @param svg         one well-formed svg element without style attributes, scripts or transparency
 * @param alternative the same in words
 * @param width       in units of the drawing, as is {@code height}
 */
public record DeskView(String svg, String alternative, int width, int height) {

    /** Width of the full layout on a page. */
    public static final int PAGE = 1100;
    /** Width of the narrow layout on a telephone. */
    public static final int PHONE = 360;
    private static final int NARROWEST = 300;
    private static final int WIDEST = 2000;
    private static final String FONT = "system-ui, 'Liberation Sans', Arial, sans-serif";

    /**
     * Draws a scene. Without a proposal only the present state is shown, whatever is asked for.
     *
     * @param width in [300, 2000]; under 640 the labels become a numbered list under the drawing
     */
    public static DeskView draw(DeskScene scene, Show asked, int width) {
        if (!(width >= NARROWEST && width <= WIDEST)) {
            throw new IllegalArgumentException("A drawing is " + NARROWEST + " to " + WIDEST + " wide, but was " + width);
        }
        Show show = scene.proposal().isPresent() ? asked : Show.PRESENT;
        Stage stage = Stage.of(scene);
        Heading heading = Heading.of(scene, show, width);
        Sheet sheet = Sheet.of(stage, show, width, heading.height());
        new SceneArt(sheet).draw();
        new ContactMarks(sheet).draw();
        Map<Label.Topic, Point> anchors = new Gauges(sheet).draw();
        anchors.put(Label.Topic.SIGHT, new SightLines(sheet).draw());
        heading.draw(sheet.pen());
        List<Label> labels = new Wording(stage, show).labels();
        int height = sheet.narrow() ? new NarrowLabels(sheet, anchors).draw(labels) : new WideLabels(sheet, anchors).draw(labels);
        String alternative = TextAlternative.of(labels, stage, show);
        return new DeskView(wrap(scene, show, width, height, alternative, sheet.pen().toString()), alternative, width, height);
    }

    private static String wrap(DeskScene scene, Show show, int width, int height, String alternative, String drawing) {
        String id = scene.id() + "-" + show.name().toLowerCase(Locale.ROOT) + "-" + width;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height + "\" width=\"" + width + "\" height=\"" + height
                + "\" role=\"img\" aria-labelledby=\"t-" + id + " d-" + id + "\" font-family=\"" + FONT + "\">"
                + "<title id=\"t-" + id + "\">" + SvgText.escape("Side view to scale: " + scene.title()) + "</title>"
                + "<desc id=\"d-" + id + "\">" + SvgText.escape(alternative) + "</desc>\n"
                + "<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"" + Palette.PAPER + "\"/>\n"
                + drawing + "</svg>\n";
    }

    /** Whether a stand-in is drawn somewhere, so that the legend explains the dots. */
    static boolean anyMissing(Stage stage) {
        for (BodyPart part : BodyPart.values()) {
            if (!part.measured(stage.body(), stage.standing())) {
                return true;
            }
        }
        Settings s = stage.now().settings();
        return !s.measured(Setting.DESK_HEIGHT) || !s.measured(Setting.SCREEN_TOP) || !s.measured(Setting.SCREEN_DISTANCE)
                || !stage.standing() && !(s.measured(Setting.SEAT_HEIGHT) && s.measured(Setting.SEAT_DEPTH));
    }
}
