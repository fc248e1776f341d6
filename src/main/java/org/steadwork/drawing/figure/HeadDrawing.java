package org.steadwork.drawing.figure;

import java.util.List;

/** Draws head, hair and a plain face, so that one sees which way the figure looks. */
final class HeadDrawing {

    private static final String HAIR = "#b7ab9d";
    private static final double FULL_FACE = .92;

    private final Panel panel;
    private final Head head;
    private final String ink;
    private final String skin;
    private final double facing;

    HeadDrawing(Panel panel, Head head, String ink, String skin) {
        this.panel = panel;
        this.head = head;
        this.ink = ink;
        this.skin = skin;
        this.facing = head.turn().of(1, 0, 0).dot(panel.camera().towards());
    }

    String draw() {
        String skull = panel.outline(head.skull());
        String jaw = panel.outline(head.jaw());
        String hair = panel.outline(head.hair());
        String nose = panel.outline(head.nose());
        boolean noseShows = -.3 < facing && facing < FULL_FACE;
        StringBuilder svg = new StringBuilder("<g fill=\"" + ink + "\" stroke=\"" + ink + "\" stroke-width=\"" + Svg.num(panel.outlineStroke())
                + "\" stroke-linejoin=\"round\"><path d=\"" + skull + jaw + "\"/><path d=\"" + hair + "\"/>"
                + (noseShows ? "<path d=\"" + nose + "\"/>" : "") + "</g>");
        String hairFill = Svg.fill(hair, HAIR);
        String skinFill = (noseShows ? Svg.fill(nose, skin) : "") + Svg.fill(skull, skin) + Svg.fill(jaw, skin);
        svg.append(facing < -.25 ? skinFill + hairFill : hairFill + skinFill);
        for (Side side : Side.values()) {
            svg.append(ear(side));
        }
        for (Side side : Side.values()) {
            svg.append(eye(side));
        }
        if (facing > .3) {
            svg.append(nose());
        }
        return svg.toString();
    }

    private String ear(Side side) {
        double shows = head.turn().of(0, 0, side.sign()).dot(panel.camera().towards());
        if (shows <= .25) {
            return "";
        }
        Point at = panel.at(head.ears().get(side));
        double k = panel.scale();
        return "<ellipse cx=\"" + Svg.num(at.x()) + "\" cy=\"" + Svg.num(at.y()) + "\" rx=\"" + Svg.num(1.25 * k * Math.max(shows, .45))
                + "\" ry=\"" + Svg.num(1.7 * k) + "\" fill=\"" + skin + "\" stroke=\"" + ink + "\" stroke-width=\"1.2\"/>";
    }

    private String eye(Side side) {
        Vec3 outward = head.turn().of(5, .3, side.sign() * 2.7).unit();
        if (outward.dot(panel.camera().towards()) <= .12) {
            return "";
        }
        return Svg.circle(panel.at(head.eyes().get(side)), .62 * panel.scale(), "fill=\"" + ink + "\"");
    }

    private String nose() {
        double k = panel.scale();
        List<Ball> balls = head.nose();
        Point tip = panel.at(balls.get(1).centre());
        if (facing >= FULL_FACE) {
            return Svg.stroke("M" + Svg.xy(tip.x() - .5 * k, tip.y() + .2 * k) + "Q" + Svg.xy(tip.x(), tip.y() + .9 * k) + " "
                    + Svg.xy(tip.x() + .5 * k, tip.y() + .2 * k), ink, 1.2);
        }
        int way = head.turn().of(1, 0, 0).dot(panel.camera().right()) > 0 ? 1 : -1;
        return Svg.stroke(Svg.line(panel.at(balls.get(0).centre()), tip.plus(.3 * k * way, .3 * k)), ink, 1.1);
    }
}
