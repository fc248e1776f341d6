package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** An upright box; furniture is made of them. Both for drawing and for the picture's extent. */
record Box(Vec3 low, Vec3 high) {

    static final String FILL = "#f1ece3";
    static final double LINE = 1.3;
    private static final double EDGE_ON = .02;
    private static final Vec3[] NORMALS = {new Vec3(1, 0, 0), new Vec3(-1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, -1, 0),
        new Vec3(0, 0, 1), new Vec3(0, 0, -1)};
    /** Corners of each face; a corner's number has bit 0 for high x, bit 1 for high y, bit 2 for high z. */
    private static final int[][] FACES = {{1, 3, 7, 5}, {0, 4, 6, 2}, {2, 6, 7, 3}, {0, 1, 5, 4}, {4, 5, 7, 6}, {0, 2, 3, 1}};

    static Box of(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }

    /** A crate hangs from the point it is held at. */
    static Box crate(Values prop, Joints joints) {
        Vec3 top = joints.at(prop.raw("at"));
        double[] size = prop.has("size") ? prop.numbers("size") : new double[] {15, 9, 18};
        return of(top.x() - size[0] / 2, top.y() - size[1], top.z() - size[2] / 2, top.x() + size[0] / 2, top.y(), top.z() + size[2] / 2);
    }

    /** The boxes a prop is made of; none for props that hang on the figure. */
    static List<Box> of(Values prop) {
        double x = prop.number("x", 0);
        return switch (prop.text("type", "")) {
            case "floor" -> List.of(of(x + prop.number("from", -30), -1.4, -12, x + prop.number("to", 30), 0, 12));
            case "mat" -> List.of(of(x + prop.number("from", -60), -2.2, prop.number("z0", -14), x + prop.number("to", 60), 0, prop.number("z1", 14)));
            case "chair" -> seat(prop, x, true);
            case "stool" -> seat(prop, x, false);
            case "desk", "table" -> table(prop, x);
            case "wall" -> List.of(of(x, 0, -16, x + 3.2, prop.number("h", 104), 16));
            case "step" -> List.of(of(x, 0, -12, x + prop.number("w", 26), prop.number("h", 9), 12));
            case "box" -> List.of(new Box(corner(prop, "lo"), corner(prop, "hi")));
            case "crate", "band", "weight", "roll", "ball", "bar" -> List.of();
            default -> throw new IllegalArgumentException("there is no prop '" + prop.text("type", "") + "'");
        };
    }

    Vec3 corner(int number) {
        return new Vec3((number & 1) == 0 ? low.x() : high.x(), (number & 2) == 0 ? low.y() : high.y(), (number & 4) == 0 ? low.z() : high.z());
    }

    /** Draws the faces that look towards the eye. */
    String draw(Panel panel, String fill, String line, double width) {
        StringBuilder svg = new StringBuilder();
        for (int face = 0; face < FACES.length; face++) {
            if (NORMALS[face].dot(panel.camera().towards()) > EDGE_ON) {
                List<Point> corners = new ArrayList<>();
                for (int corner : FACES[face]) {
                    corners.add(panel.at(corner(corner)));
                }
                svg.append(Svg.polygon(corners, fill, line, width));
            }
        }
        return svg.toString();
    }

    private static List<Box> seat(Values prop, double x, boolean backRest) {
        double height = prop.number("h", 24.5);
        double front = x + prop.number("seat_front", 17);
        double back = front - prop.number("depth", 23);
        double half = prop.number("hw", 11);
        List<Box> boxes = new ArrayList<>();
        for (double leg : new double[] {back, front - 1.8}) {
            boxes.add(of(leg, 0, -half, leg + 1.8, height - 2, -half + 1.8));
            boxes.add(of(leg, 0, half - 1.8, leg + 1.8, height - 2, half));
        }
        boxes.add(of(back, height - 2.2, -half, front, height, half));
        if (backRest) {
            boxes.add(of(back - 1.8, height + 7, -half, back, height + prop.number("back_h", 26), half));
            boxes.add(of(back - 1.8, height - 2, -2, back, height + 8, 2));
        }
        return boxes;
    }

    private static List<Box> table(Values prop, double x) {
        double height = prop.number("h", 41);
        double width = prop.number("w", 34);
        return List.of(of(x + width - 2.5, 0, -2, x + width - .5, height - 2, 2), of(x, height - 2.2, -18, x + width, height, 18));
    }

    private static Vec3 corner(Values prop, String name) {
        double[] v = prop.numbers(name);
        return new Vec3(v[0], v[1], v[2]);
    }
}
