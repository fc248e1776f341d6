package org.steadwork.drawing.figure;

import java.util.List;

/** A hand drawn large, finger by finger. */
final class CloseUpHand {

    private static final double[] FINGER_LENGTHS = {4.7, 5.3, 4.9, 3.8};
    private static final double[] FINGER_OFFSETS = {1.95, .65, -.65, -1.9};
    /** How far behind the middle finger's knuckle each finger's lies. */
    private static final double[] KNUCKLE_STEPS = {.25, 0, .25, .6};
    private static final double[] PHALANX_SHARES = {.46, .31, .23};
    private static final double[] PHALANX_RADII = {.85, .78, .66};
    private static final double KNUCKLE = 4.75;

    private final Values data;
    private final String name;
    private final Joints out;
    private final Hand hand;

    private CloseUpHand(Values data, Joints out) {
        this.data = data;
        this.out = out;
        boolean right = data.text("side", "R").equals("R");
        name = data.text("name", right ? "R" : "L");
        Vec3 fore = direction("dir").unit();
        Vec3 thumb = direction("thumbside").across(fore).unit();
        Vec3 palm = right ? thumb.cross(fore) : fore.cross(thumb);
        Vec3 wrist = out.at(data.list("wrist"));
        double length = data.number("fore", Lengths.FOREARM);
        Vec3 elbow = wrist.minus(fore.times(length));
        out.add("fore_" + name, layer(), new Ball(elbow, 2.55), new Ball(elbow.plus(fore.times(length * .3)), 2.75),
                new Ball(wrist.plus(thumb.times(.45)), 1.45), new Ball(wrist.minus(thumb.times(.45)), 1.45));
        double flex = data.number("wristflex", 0);
        double deviation = data.number("dev", 0);
        Vec3 along = fore.turnedTo(palm, flex);
        hand = new Hand(wrist, along.turnedTo(thumb, deviation), thumb.turnedTo(along, -deviation), palm.turnedTo(fore, -flex));
    }

    static void draw(Values data, Joints out) {
        CloseUpHand hand = new CloseUpHand(data, out);
        hand.palm();
        for (int i = 0; i < FINGER_LENGTHS.length; i++) {
            hand.finger(i);
        }
        hand.thumb();
    }

    private String layer() {
        return "hand_" + name;
    }

    private Vec3 direction(String key) {
        double[] v = data.numbers(key);
        return new Vec3(v[0], v[1], v[2]);
    }

    private void palm() {
        out.add("palm_" + name, layer(), hand.ball(.2, .5, 0, 1.4), hand.ball(.2, -.5, 0, 1.4), hand.ball(4.6, 2, 0, 1),
                hand.ball(4.9, .4, 0, 1.05), hand.ball(4.3, -2, 0, .95), hand.ball(1.6, 1.2, 0, 1.4));
        out.put("wrist_" + name, hand.wrist());
        out.put("hollow_" + name, hand.at(4.2, 0, 2.2));
    }

    /** Each of the three joints bends towards the palm; a profile hand has fingers of one length, drawn as one. */
    private void finger(int i) {
        boolean profile = data.flag("profile", false);
        String key = "finger" + (i + 1);
        List<?> given = data.has(key) ? data.list(key) : data.list("fingers");
        double[] bends = given.isEmpty() ? new double[] {5, 5, 5} : Values.numbers(key, given);
        Vec3 straight = hand.fingers().turnedTo(hand.thumb(), data.number("spread", 0) * (1.5 - i) * .66);
        Ball before = hand.ball(KNUCKLE - (profile ? 0 : KNUCKLE_STEPS[i]), FINGER_OFFSETS[i], 0, .95);
        String layer = profile ? "fingers_" + name : layer();
        double bend = 0;
        for (int joint = 0; joint < PHALANX_SHARES.length; joint++) {
            bend += bends[joint];
            double length = (profile ? 5.4 : FINGER_LENGTHS[i]) * PHALANX_SHARES[joint];
            Ball after = new Ball(before.centre().plus(straight.turnedTo(hand.palm(), bend).times(length)), PHALANX_RADII[joint]);
            out.add(key + "_" + name, layer, before, after);
            out.put("dip" + (i + 1) + "_" + name, before.centre().towards(after.centre(), .5));
            before = after;
        }
        out.put("tip" + (i + 1) + "_" + name, before.centre());
    }

    private void thumb() {
        Values angles = data.one("thumb");
        double flex = angles.number("flex", 10);
        double abduction = Math.toRadians(angles.number("abd", 20));
        Vec3 root = hand.at(1.3, 1.35, .4);
        Vec3 first = hand.fingers().turnedTo(hand.thumb(), angles.number("ext", 35)).times(Math.cos(abduction))
                .plus(hand.palm().times(Math.sin(abduction))).unit();
        Vec3 joint = root.plus(first.times(3.2));
        Vec3 second = bentInward(first, flex);
        Vec3 last = joint.plus(second.times(1.6));
        Vec3 tip = last.plus(bentInward(second, flex).times(1.5));
        String thumb = "thumb_" + name;
        out.add(thumb, thumb, new Ball(root, 1.25), new Ball(joint, .95));
        out.add(thumb, thumb, new Ball(joint, .95), new Ball(last, .9), new Ball(tip, .68));
        out.put("thumbtip_" + name, tip);
        out.put("thumbpad_" + name, last.towards(tip, .5));
    }

    private Vec3 bentInward(Vec3 direction, double degrees) {
        return direction.turnedTo(hand.thumb().times(-1).across(direction).unit(), degrees).unit();
    }
}
