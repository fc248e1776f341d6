package org.steadwork.drawing.desk;

import java.util.Locale;
import org.steadwork.drawing.SvgText;

/**
 * The proposed settings as a small picture to stick to the desk: person and furniture to scale with the heights to set, nothing
 * judged and nothing of the present state.
 *
 * @param svg         one well-formed svg element without style attributes, scripts or transparency
 * @param alternative the same in words
 */
public record DeskCard(String svg, String alternative) {

    private static final int WIDTH = 420;
    private static final double LEFT = 190;
    private static final double RIGHT = 330;
    private static final double STEP = 5;
    private static final Ink RULE = Ink.line(Palette.INK, 1.4);

    /** Draws the settings of a scene that has a proposal; throws IllegalArgumentException without one. */
    public static DeskCard draw(DeskScene scene) {
        if (scene.proposal().isEmpty()) {
            throw new IllegalArgumentException("A card shows proposed settings, and there are none");
        }
        Stage stage = Stage.of(scene);
        Settings s = stage.then().settings();
        double x0 = -LEFT - 60;
        double back = stage.edge() + s.of(Setting.DESK_DEPTH);
        double x1 = back + RIGHT;
        double high = Math.max(stage.then().joints().eye().y() + 130, s.of(Setting.SCREEN_TOP) + 40) + 110;
        double scale = WIDTH / (x1 - x0);
        int height = (int) Math.ceil(high * scale + 14);
        Frame frame = new Frame(scale, -x0 * scale, high * scale);
        Sheet sheet = new Sheet(new Pen(), frame, stage, Show.PROPOSED, WIDTH, 0, 0, WIDTH, x0 + 60, back + 20);
        new SceneArt(sheet).draw();
        Dimensions dimensions = new Dimensions(sheet.pen(), frame);
        if (!stage.standing()) {
            dimensions.height("Seat", x0 + 90, s.of(Setting.SEAT_HEIGHT) / 2, s, Setting.SEAT_HEIGHT, -40);
            dimensions.footrest(stage, s);
        }
        dimensions.height("Desk", back + 70, s.of(Setting.DESK_HEIGHT) / 2, s, Setting.DESK_HEIGHT, back);
        dimensions.height("Screen top", back + 190, (s.of(Setting.DESK_HEIGHT) + s.of(Setting.SCREEN_TOP)) / 2, s, Setting.SCREEN_TOP, stage.then().screenX() + 30);
        dimensions.distance(stage, s, high - 40);
        String id = "card-" + scene.id();
        String words = "Set: " + dimensions.words + ".";
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + height + "\" width=\"" + WIDTH + "\" height=\"" + height
                + "\" role=\"img\" aria-labelledby=\"t-" + id + " d-" + id + "\" font-family=\"system-ui, 'Liberation Sans', Arial, sans-serif\"><title id=\"t-"
                + id + "\">Settings of the work place, to scale</title><desc id=\"d-" + id + "\">" + SvgText.escape(words) + "</desc>\n<rect width=\"" + WIDTH + "\" height=\"" + height + "\" fill=\"" + Palette.PAPER + "\"/>\n"
                + sheet.pen() + "</svg>\n";
        return new DeskCard(svg, words);
    }

    /** Draws the dimensions and keeps what they say. */
    private static final class Dimensions {
        private final Pen pen;
        private final Frame frame;
        private final StringBuilder words = new StringBuilder();

        Dimensions(Pen pen, Frame frame) {
            this.pen = pen;
            this.frame = frame;
        }

        private String say(String what, double value) {
            String mm = Millimetres.whole(STEP * Math.rint(value / STEP));
            words.append(words.isEmpty() ? "" : "; ").append(what.toLowerCase(Locale.ROOT)).append(' ').append(mm).append(" mm");
            return mm;
        }

        /** From the floor up to a setting, its number on the line at a height of its own; a thin line leads to the thing itself. */
        void height(String what, double x, double textAt, Settings s, Setting setting, double thing) {
            if (!s.measured(setting)) {
                return;
            }
            double value = s.of(setting);
            pen.line(frame.at(thing, value), frame.at(x + (thing < x ? 25 : -25), value), Ink.line(Palette.MUTED, .9));
            pen.arrow(frame.at(x, 0), frame.at(x, value), RULE, 7);
            Point middle = frame.at(x, textAt);
            pen.plate(middle.plus(0, -7), what, Type.of(11, Palette.INK));
            pen.plate(middle.plus(0, 8), say(what, value), Type.of(15, Palette.INK).inBold());
        }

        void footrest(Stage stage, Settings s) {
            if (!s.measured(Setting.FOOTREST_HEIGHT) || !s.has(Setting.FOOTREST_HEIGHT)) {
                return;
            }
            double value = s.of(Setting.FOOTREST_HEIGHT);
            double x = stage.then().joints().ankle().x() + 270;
            pen.line(frame.at(x - 110, value), frame.at(x + 20, value), Ink.line(Palette.MUTED, .9));
            pen.arrow(frame.at(x, 0), frame.at(x, value), RULE, 5);
            Point beside = frame.at(x + 15, Math.max(value / 2, 50));
            pen.text(beside.x(), beside.y() - 3, "Footrest", Type.of(11, Palette.INK).withHalo());
            pen.text(beside.x(), beside.y() + 12, say("Footrest", value), Type.of(15, Palette.INK).inBold().withHalo());
        }

        void distance(Stage stage, Settings s, double y) {
            if (!s.measured(Setting.SCREEN_DISTANCE)) {
                return;
            }
            Point eye = stage.then().joints().eye();
            Point face = new Point(stage.then().screenX(), y);
            pen.line(frame.at(eye), frame.at(eye.x(), y + 15), Ink.line(Palette.MUTED, .9).dash("2 3"));
            pen.line(frame.at(face.x(), s.of(Setting.SCREEN_TOP)), frame.at(face.x(), y + 15), Ink.line(Palette.MUTED, .9).dash("2 3"));
            pen.arrow(frame.at(eye.x(), y), frame.at(face), RULE, 7);
            pen.plate(frame.at((eye.x() + face.x()) / 2, y), say("Eye to screen", s.of(Setting.SCREEN_DISTANCE)), Type.of(15, Palette.INK).inBold());
        }
    }
}
