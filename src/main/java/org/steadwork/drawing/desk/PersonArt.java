package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Draws the person of one state, each part that rests on an unmeasured number dotted and by itself. */
final class PersonArt {

    private static final List<BodyPart> BODY = List.of(BodyPart.TRUNK, BodyPart.HEAD, BodyPart.THIGH, BodyPart.SHANK, BodyPart.FOOT);
    private static final Ink DOTTED = Ink.line(Palette.MUTED, 1.4).dash(Ink.DOTS);

    private final Pen pen;
    private final Frame frame;
    private final Placed at;
    private final Look look;
    private final boolean standing;
    private final Silhouette silhouette;
    private final Set<BodyPart> dotted = EnumSet.noneOf(BodyPart.class);

    PersonArt(Pen pen, Frame frame, Placed at, Look look, boolean standing) {
        this.pen = pen;
        this.frame = frame;
        this.at = at;
        this.look = look;
        this.standing = standing;
        silhouette = new Silhouette(at, standing);
        for (BodyPart part : BodyPart.values()) {
            if (!part.measured(at.pose().body(), standing)) {
                dotted.add(part);
            }
        }
    }

    /** Head, trunk and leg in one outline, cut flat at the floor and at the seat. */
    void body() {
        List<Cone> solid = new ArrayList<>();
        BODY.stream().filter(p -> !dotted.contains(p)).forEach(p -> solid.addAll(silhouette.cones(p)));
        pen.path(new Contour(solid, 22, 6, cut()).path(frame), look.person().fill(look.body()));
        for (BodyPart part : BODY) {
            if (dotted.contains(part)) {
                pen.path(new Contour(silhouette.cones(part), 22, 6, cut()).path(frame), DOTTED);
            }
        }
    }

    void arm() {
        Contour arm = new Contour(silhouette.cones(BodyPart.ARM), 12, 4, (x, y) -> -1000);
        pen.path(arm.path(frame), dotted.contains(BodyPart.ARM) ? DOTTED : look.person().fill(look.arm()));
    }

    private Contour.Cut cut() {
        if (standing) {
            return (x, y) -> 1.5 - y;
        }
        double seat = at.settings().of(Setting.SEAT_HEIGHT);
        double front = at.shift() + at.settings().of(Setting.SEAT_DEPTH);
        return (x, y) -> Math.max(1.5 - y, x < front ? Math.min(seat - y, front - 6 - x) : -1);
    }

    /** Eye, line of sight and, on the proposed person, ear and joints. */
    void marks(boolean over) {
        Skeleton j = at.joints();
        Point eye = frame.at(j.eye());
        Point aim = frame.at(at.face().aim());
        String colour = look.colour();
        pen.line(eye, aim, Ink.line(colour, 1.1).dash(look.present() ? "1.5 3.5" : "10 3"));
        pen.circle(eye, 2.6, Ink.filled(colour));
        if (!over) {
            pen.path(frame.curveFrom(silhouette.onHead(-70, -6))
                    .bend(silhouette.onHead(-66, 26), silhouette.onHead(-102, 26), silhouette.onHead(-98, -2))
                    .bend(silhouette.onHead(-96, -18), silhouette.onHead(-86, -34), silhouette.onHead(-76, -30)).open(), Ink.line(colour, .9));
        }
        pen.circle(aim, 2, Ink.filled(colour));
        if (!look.present()) {
            for (Point joint : List.of(j.hip(), j.knee(), j.ankle(), j.shoulder(), at.arm().elbow(), at.arm().wrist())) {
                pen.circle(frame.at(joint), 2.1, Ink.line(colour, .9).fill(Palette.PAPER));
            }
        }
    }
}
