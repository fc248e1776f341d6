package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Looks for impossible poses: names that do not exist, joints beyond a wide healthy adult range, lost balance. */
final class PoseCheck {

    private record Range(double low, double high) {
    }

    /** Degrees. Chosen only to catch slips in the data; common practice, no source. */
    private static final Map<String, Range> LIMITS = Map.ofEntries(
            limit("lumbar.flex", -35, 55), limit("chest.flex", -25, 40), limit("neck.flex", -40, 45), limit("head.flex", -42, 30),
            limit("lumbar.side", -25, 25), limit("chest.side", -25, 25), limit("neck.side", -40, 40), limit("head.side", -15, 15),
            limit("lumbar.turn", -12, 12), limit("chest.turn", -40, 40), limit("neck.turn", -45, 45), limit("head.turn", -45, 45),
            limit("shoulder.flex", -60, 180), limit("shoulder.abd", -50, 180), limit("shoulder.rot", -90, 100), limit("elbow.flex", 0, 150),
            limit("forearm.pro", -95, 95), limit("wrist.flex", -85, 90), limit("wrist.dev", -40, 30), limit("hip.flex", -25, 130),
            limit("hip.abd", -30, 60), limit("hip.rot", -50, 70), limit("knee.flex", 0, 150), limit("ankle.flex", -55, 30),
            limit("toes.ext", -40, 80));

    private static final Set<String> OTHER_NAMES = Set.of("support", "root", "level", "pin", "pitch", "roll", "yaw", "neck.glide", "blade.up",
            "blade.fwd", "belly.out", "show_blades", "grip", "hand", "hand.dir", "thumb", "elbow.pole", "foot", "foot.yaw", "foot.turn", "heel",
            "toe.up", "knee.pole", "view", "window", "about", "only", "moves", "with_hands", "hands");

    private static final double FORWARD_SLACK = 1;
    private static final double SIDEWAYS_SLACK = 3;

    private PoseCheck() {
    }

    static List<String> of(FigureData figure, List<Skeleton> skeletons) {
        List<String> doubts = new ArrayList<>();
        for (int i = 0; i < figure.frames(); i++) {
            String frame = figure.key() + ", frame " + (i + 1) + ": ";
            Pose pose = figure.poses().get(i);
            angles(pose, frame, doubts);
            skeletons.get(i).joints().warnings().forEach(w -> doubts.add(frame + w));
            if (skeletons.get(i).head() != null && figure.values().flag("balance", true) && standsFree(pose, skeletons.get(i).joints())) {
                balance(figure.values().text("stands_on", "RL"), skeletons.get(i).joints(), frame, doubts);
            }
        }
        return doubts;
    }

    private static void angles(Pose pose, String frame, List<String> doubts) {
        for (String name : pose.values().names()) {
            String joint = name.replaceFirst("\\.[RL]$", "");
            Range range = LIMITS.get(joint);
            if (range == null) {
                if (!OTHER_NAMES.contains(joint)) {
                    doubts.add(frame + "there is no joint '" + name + "'");
                }
                continue;
            }
            double degrees = pose.values().number(name);
            if (!(degrees >= range.low() && degrees <= range.high())) {
                doubts.add(frame + name + " of " + degrees + "° is outside " + range.low() + "° to " + range.high() + "°");
            }
        }
    }

    /** Standing on the feet with no hand on anything fixed. */
    private static boolean standsFree(Pose pose, Joints joints) {
        boolean held = List.of("hand", "hand.R", "hand.L").stream().anyMatch(h -> pose.values().raw(h) instanceof List<?> list && list.get(0) instanceof Number);
        String support = pose.values().text("support", "feet");
        double pitch = pose.angle("pitch");
        return !held && !pose.values().has("only") && (support.equals("feet") || support.equals("none")) && pitch > -40 && pitch < 75
                && Math.abs(pose.angle("roll")) <= 40 && Math.min(joints.point("knee_R").y(), joints.point("knee_L").y()) >= 12;
    }

    /** The centre of mass lies over the feet that carry. */
    private static void balance(String standsOn, Joints joints, String frame, List<String> doubts) {
        double ground = Math.min(lowest(joints, Side.R), lowest(joints, Side.L));
        Vec3 mass = CentreOfMass.of(joints);
        List<Vec3> soles = new ArrayList<>();
        for (Side side : Side.values()) {
            if (standsOn.contains(side.name()) && lowest(joints, side) < ground + 3) {
                soles.addAll(List.of(joints.point("heel", side), joints.point("ball", side), joints.point("toe", side)));
            }
        }
        double[] x = soles.stream().mapToDouble(Vec3::x).toArray();
        double[] z = soles.stream().mapToDouble(Vec3::z).toArray();
        over(mass.x(), x, FORWARD_SLACK, frame + "weight front to back", doubts);
        over(mass.z(), z, SIDEWAYS_SLACK, frame + "weight side to side", doubts);
    }

    private static void over(double mass, double[] soles, double slack, String what, List<String> doubts) {
        double low = Arrays.stream(soles).min().orElse(Double.NaN) - slack;
        double high = Arrays.stream(soles).max().orElse(Double.NaN) + slack;
        if (!(mass >= low && mass <= high)) {
            doubts.add("%s lies at %.1f, the feet from %.1f to %.1f".formatted(what, mass, low, high));
        }
    }

    private static double lowest(Joints joints, Side side) {
        return Math.min(joints.point("heel", side).y(), joints.point("ball", side).y());
    }

    private static Map.Entry<String, Range> limit(String joint, double low, double high) {
        return Map.entry(joint, new Range(low, high));
    }
}
