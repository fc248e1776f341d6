package org.steadwork.drawing.figure;

import java.util.List;

/** One posed frame: a whole body set on its support, or close-up hands. */
record Skeleton(Joints joints, Head head) {

    private static final double KNEE_PAD = 3.2;
    private static final double SEAT_BELOW_HIP = 5.4;

    /** Poses a frame. {@code head} is null in a close-up. Source: own model, angles as described with {@link Pose}. */
    static Skeleton of(Pose pose) {
        Joints out = new Joints();
        if (pose.isCloseUp()) {
            pose.values().nested("hands").forEach(hand -> CloseUpHand.draw(hand, out));
            return new Skeleton(out, null);
        }
        Vec3 root = root(pose);
        Trunk trunk = trunkAndLegs(pose, root, out);
        Vec3 shift = shift(pose, out);
        if (shift.length() > 0) {
            out.forgetPositions();
            trunk = trunkAndLegs(pose, root.plus(shift), out);
        }
        Arms.pose(pose, trunk.chest(), out);
        pose.values().nested("with_hands").forEach(hand -> CloseUpHand.draw(hand, out));
        return new Skeleton(out, trunk.head());
    }

    private static Trunk trunkAndLegs(Pose pose, Vec3 root, Joints out) {
        Trunk trunk = Trunk.pose(pose, root, out);
        Legs.pose(pose, trunk.pelvis(), out);
        return trunk;
    }

    /** The middle of the hips; an unknown height counts as 0 until the support is known. */
    private static Vec3 root(Pose pose) {
        List<?> root = pose.values().list("root");
        if (root.isEmpty()) {
            return Vec3.ORIGIN;
        }
        double y = root.get(1) == null ? 0 : Values.number("root", root.get(1));
        return new Vec3(Values.number("root", root.get(0)), y, root.size() > 2 ? Values.number("root", root.get(2)) : 0);
    }

    /** How far the body must move so that it rests on its support and the pinned point lies where it should. */
    private static Vec3 shift(Pose pose, Joints out) {
        List<?> root = pose.values().list("root");
        boolean heightOpen = root.isEmpty() || root.get(1) == null;
        double dy = heightOpen ? pose.angle("level") - lowest(pose, out) : 0;
        List<?> pin = pose.values().list("pin");
        if (pin.isEmpty()) {
            return new Vec3(0, dy, 0);
        }
        Vec3 held = out.point(pin.get(0).toString());
        double dx = Values.number("pin", pin.get(1)) - held.x();
        double dz = pin.size() > 2 ? Values.number("pin", pin.get(2)) - held.z() : 0;
        return new Vec3(dx, dy, dz);
    }

    private static double lowest(Pose pose, Joints out) {
        String support = pose.values().text("support", "feet");
        double low = Double.POSITIVE_INFINITY;
        for (Side side : Side.values()) {
            low = Math.min(low, switch (support) {
                case "feet" -> Math.min(out.point("heel", side).y() - 1.5,
                        Math.min(out.point("ball", side).y() - 1.2, out.point("toe", side).y() - .9));
                case "knees" -> out.point("knee", side).y() - KNEE_PAD;
                case "seat" -> out.point("hip", side).y() - SEAT_BELOW_HIP;
                case "lie" -> lowestOfTrunk(out);
                case "none" -> 0;
                default -> throw new IllegalArgumentException("there is no support '" + support + "'");
            });
        }
        return low;
    }

    private static double lowestOfTrunk(Joints out) {
        return out.segments().stream().filter(s -> s.name().equals("pelvis") || s.name().equals("chest"))
                .flatMap(s -> s.balls().stream()).mapToDouble(b -> b.centre().y() - b.radius()).min().orElse(0);
    }
}
