package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** Draws the things a figure sits on, holds or pushes against. */
final class PropDrawing {

    private static final String TIN = "#b4bac0";
    private static final String BAND = "#c9a24a";
    private static final String ROLL = "#c8ced3";
    private static final String CRATE = "#ddd3c0";
    private static final double THIN = 1.6;

    private final Panel panel;
    private final Joints joints;

    PropDrawing(Panel panel, Joints joints) {
        this.panel = panel;
        this.joints = joints;
    }

    String draw(Values prop) {
        return switch (prop.text("type", "")) {
            case "band" -> band(prop);
            case "weight" -> weight(prop);
            case "roll", "ball", "bar" -> round(prop);
            case "crate" -> Box.crate(prop, joints).draw(panel, CRATE, Svg.INK, THIN);
            default -> boxes(prop);
        };
    }

    private String boxes(Values prop) {
        StringBuilder svg = new StringBuilder();
        for (Box box : Box.of(prop)) {
            svg.append(box.draw(panel, prop.text("fill", Box.FILL), Svg.GREY_LINE, Box.LINE));
        }
        return svg.toString();
    }

    private String band(Values prop) {
        StringBuilder d = new StringBuilder();
        for (Object place : prop.list("pts")) {
            Point p = panel.at(joints.at(place));
            d.append(d.length() == 0 ? "M" : "L").append(Svg.xy(p.x(), p.y()));
        }
        return Svg.stroke(d.toString(), Svg.INK, 4.4) + Svg.stroke(d.toString(), BAND, 2.2);
    }

    private String weight(Values prop) {
        Vec3 centre = joints.at(prop.raw("at"));
        double[] axis = prop.has("axis") ? prop.numbers("axis") : new double[] {1, 0, 0};
        double radius = prop.number("r", 2.3) * panel.scale();
        double half = prop.number("len", 4.2);
        Vec3 along = new Vec3(axis[0], axis[1], axis[2]).unit().times(half);
        Point a = panel.at(centre.minus(along));
        Point b = panel.at(centre.plus(along));
        StringBuilder svg = new StringBuilder("<path d=\"" + Svg.line(a, b) + "\" stroke=\"" + Svg.INK + "\" stroke-width=\""
                + Svg.num(THIN * panel.scale()) + "\"/>");
        boolean sideOn = a.distance(b) > 1.2 * half * panel.scale();
        for (Point disc : List.of(a, b)) {
            if (sideOn) {
                double dx = -(b.y() - a.y()) / a.distance(b) * radius;
                double dy = (b.x() - a.x()) / a.distance(b) * radius;
                svg.append("<path d=\"").append(Svg.line(disc.plus(dx, dy), disc.plus(-dx, -dy))).append("\" stroke=\"").append(Svg.INK)
                        .append("\" stroke-width=\"").append(Svg.num(1.9 * panel.scale())).append("\" stroke-linecap=\"round\"/>");
            } else {
                svg.append(Svg.circle(disc, radius, "fill=\"" + TIN + "\" stroke=\"" + Svg.INK + "\" stroke-width=\"1.6\""));
            }
        }
        return svg.toString();
    }

    private String round(Values prop) {
        double radius = prop.number("r", 2);
        List<Ball> balls = new ArrayList<>();
        for (Object place : prop.has("pts") ? prop.list("pts") : List.of(prop.raw("at"))) {
            balls.add(new Ball(joints.at(place), radius));
        }
        String fill = prop.text("fill", prop.text("type", "").equals("ball") ? BAND : ROLL);
        String body = Svg.filled(panel.outline(balls), fill, Svg.INK, THIN);
        double twist = prop.number("twist", 0);
        return twist == 0 ? body : body + twistMarks(panel.at(balls.get(0).centre()), panel.at(balls.get(balls.size() - 1).centre()),
                radius * panel.scale() * .85, twist);
    }

    private static String twistMarks(Point a, Point b, double radius, double twist) {
        double length = a.distance(b);
        double ux = (b.x() - a.x()) / length;
        double uy = (b.y() - a.y()) / length;
        double lean = twist * length / 16;
        StringBuilder svg = new StringBuilder();
        for (int i = 1; i < 8; i++) {
            Point mark = a.towards(b, i / 8.0);
            Point from = mark.plus(uy * radius - ux * lean, -ux * radius - uy * lean);
            Point to = mark.plus(-uy * radius + ux * lean, ux * radius + uy * lean);
            svg.append("<path d=\"").append(Svg.line(from, to)).append("\" stroke=\"").append(Svg.INK).append("\" stroke-width=\"1.2\"/>");
        }
        return svg.toString();
    }
}
