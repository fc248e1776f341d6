package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/** Marks, on the present state, where body and furniture meet wrongly: thigh at the desk, feet off their support, back off the rest. */
final class ContactMarks {

    private final Sheet sheet;
    private final Pen pen;
    private final Frame frame;
    private final Placed now;
    private final Deviations d;

    ContactMarks(Sheet sheet) {
        this.sheet = sheet;
        pen = sheet.pen();
        frame = sheet.frame();
        now = sheet.stage().now();
        d = now.deviations();
    }

    void draw() {
        if (!sheet.show().present() || sheet.stage().standing()) {
            return;
        }
        if (d.state(Target.THIGH).off()) {
            double y = now.settings().underside();
            double edge = sheet.stage().edge();
            pen.line(frame.at(edge + 4, y), frame.at(edge + 110, y), Ink.line(d.state(Target.THIGH).colour, 4));
        }
        if (d.feet > Legs.FEET_LEAVE && d.state(Target.FEET).off()) {
            feet();
        }
        if (now.pose().legs().backGap() > 12 && d.missing(Target.KNEE).isEmpty()) {
            double y = now.settings().of(SEAT_HEIGHT) + .069 * now.pose().stature() + 12;
            pen.line(frame.at(now.backRestAt(y), y), frame.at(now.joints().pelvis().x() - .068 * now.pose().stature(), y), Ink.line(Palette.RED, 1.6));
        }
    }

    private void feet() {
        String colour = d.state(Target.FEET).colour;
        double ankle = now.joints().ankle().x() - .02 * now.pose().stature();
        double support = now.settings().of(FOOTREST_HEIGHT);
        double x = ankle - 95;
        pen.line(frame.at(ankle + 20, support + d.feet), frame.at(x - 25, support + d.feet), Ink.line(colour, 1));
        pen.arrow(frame.at(x, support), frame.at(x, support + d.feet), Ink.line(colour, 1.3), 6);
        Point text = frame.at(x - 18, support + d.feet / 2);
        pen.text(text.x() - 2, text.y() + 4, Millimetres.whole(d.feet), Type.of(11.5, colour).inBold().toTheLeft().withHalo());
    }
}
