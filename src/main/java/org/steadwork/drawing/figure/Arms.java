package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** Poses the arms: from angles, or from where the palm rests. */
final class Arms {

    private Arms() {
    }

    static void pose(Pose pose, Turn chest, Joints out) {
        for (Side side : Side.values()) {
            arm(pose, chest, side, out);
        }
    }

    /** Where an arm is: the fingers and the thumb are unit directions. */
    private record Bones(Vec3 elbow, Vec3 wrist, Vec3 fingers, Vec3 thumb) {
    }

    private static void arm(Pose pose, Turn chest, Side side, Joints out) {
        Vec3 shoulder = out.point("shoulder", side);
        Object target = pose.value("hand", side);
        Bones bones = target == null || "free".equals(target) ? hanging(pose, chest, side, shoulder) : placed(pose, chest, side, shoulder, target, out);
        Vec3 elbow = bones.elbow();
        Vec3 wrist = bones.wrist();
        Vec3 palmward = side == Side.R ? bones.thumb().cross(bones.fingers()) : bones.fingers().cross(bones.thumb());
        Hand hand = new Hand(wrist, bones.fingers(), bones.thumb(), palmward);
        boolean fist = pose.angle("grip", side) != 0;
        out.put(side.of("elbow"), elbow);
        out.put(side.of("wrist"), wrist);
        Vec3 palm = hand.at(Lengths.WRIST_TO_PALM, 0, 0);
        out.put(side.of("palm"), palm);
        out.put(side.of("grip"), palm.plus(palmward.times(1.6)));
        out.put(side.of("knuckle"), hand.at(5, 0, 0));
        out.put(side.of("fingers"), fist ? hand.at(5.6, 0, 1) : hand.at(10.2, 0, 0));
        String arm = side.of("arm");
        out.add(side.of("upper"), arm, new Ball(shoulder, 3.4), new Ball(shoulder.towards(elbow, .45), 2.75), new Ball(elbow, 2.35));
        out.add(side.of("fore"), arm, new Ball(elbow, 2.3), new Ball(elbow.towards(wrist, .28), 2.35), new Ball(wrist, 1.6));
        if (fist) {
            out.add(side.of("hand"), arm, new Ball(wrist, 1.6), hand.ball(4.4, 1.1, 0, 1.5), hand.ball(4.4, -1.1, 0, 1.4),
                    hand.ball(4.2, .9, 1.9, 1.3), hand.ball(4.2, -.9, 1.9, 1.2), hand.ball(2.2, 0, 1.8, 1.1));
            out.add(side.of("hand"), arm, hand.ball(2, 1.2, .8, 1), hand.ball(4.2, 1.9, 2.2, .9));
        } else {
            out.add(side.of("hand"), arm, new Ball(wrist, 1.55), hand.ball(4.6, 1.25, 0, 1.2), hand.ball(4.6, -1.2, 0, 1.15),
                    hand.ball(9.7, .6, 0, .8), hand.ball(9.3, -.7, 0, .75));
            out.add(side.of("hand"), arm, hand.ball(1.4, .9, 0, 1.1), hand.ball(4.2, 2.6, .4, .9), hand.ball(6, 2.9, .5, .7));
        }
    }

    private static Bones placed(Pose pose, Turn chest, Side side, Vec3 shoulder, Object target, Joints out) {
        int k = side.sign();
        Vec3 place = place(pose, side, target, out);
        Vec3 pole = pose.direction("elbow.pole", side);
        if (pole == null) {
            pole = chest.of(-.5, -.8, .35 * k);
        }
        Vec3 fingers = pose.direction("hand.dir", side);
        Vec3 elbow;
        Vec3 wrist;
        if (fingers != null) {
            fingers = fingers.unit();
            TwoBone reach = TwoBone.reach(shoulder, place.minus(fingers.times(Lengths.WRIST_TO_PALM)), Lengths.UPPER_ARM, Lengths.FOREARM,
                    pole, "arm " + side, out);
            elbow = reach.middle();
            wrist = reach.end();
        } else {
            TwoBone reach = TwoBone.reach(shoulder, place, Lengths.UPPER_ARM, Lengths.FOREARM + Lengths.WRIST_TO_PALM, pole, "arm " + side, out);
            elbow = reach.middle();
            fingers = reach.end().minus(elbow).unit();
            wrist = elbow.plus(fingers.times(Lengths.FOREARM));
        }
        Vec3 hint = pose.direction("thumb", side);
        Vec3 thumb = (hint == null ? chest.of(.6, .5, -.6 * k) : hint).across(fingers);
        if (thumb.length() < .05) {
            thumb = new Vec3(0, 1, .2).across(fingers);
        }
        return new Bones(elbow, wrist, fingers, thumb.unit());
    }

    /** An anchor that ends in _ takes its own side; a point given for both hands is mirrored to the left. */
    private static Vec3 place(Pose pose, Side side, Object target, Joints out) {
        if (target instanceof String anchor) {
            return out.point(anchor.endsWith("_") ? anchor + side : anchor);
        }
        List<?> list = (List<?>) target;
        if (list.get(0) instanceof String anchor) {
            if (!anchor.endsWith("_")) {
                return out.at(list);
            }
            List<Object> own = new ArrayList<>(list);
            own.set(0, anchor + side);
            if (own.size() > 3) {
                own.set(3, Values.number("hand", own.get(3)) * side.sign());
            }
            return out.at(own);
        }
        Vec3 point = out.at(list);
        return pose.ownSide("hand", side) ? point : new Vec3(point.x(), point.y(), point.z() * side.sign());
    }

    /** Abduction acts first, then flexion. */
    private static Bones hanging(Pose pose, Turn chest, Side side, Vec3 shoulder) {
        int k = side.sign();
        Turn upper = chest.of(Turn.aboutZ(pose.angle("shoulder.flex", side))).of(Turn.aboutX(-k * pose.angle("shoulder.abd", side)))
                .of(Turn.aboutY(-k * pose.angle("shoulder.rot", side)));
        Vec3 elbow = shoulder.plus(upper.of(0, -Lengths.UPPER_ARM, 0));
        Turn fore = upper.of(Turn.aboutZ(pose.angle("elbow.flex", side))).of(Turn.aboutY(k * pose.angle("forearm.pro", side)));
        Vec3 wrist = elbow.plus(fore.of(0, -Lengths.FOREARM, 0));
        Turn hand = fore.of(Turn.aboutZ(pose.angle("wrist.dev", side))).of(Turn.aboutX(k * pose.angle("wrist.flex", side)));
        return new Bones(elbow, wrist, hand.of(0, -1, 0), hand.of(1, 0, 0));
    }
}
