package org.steadwork.drawing.figure;

import java.util.List;

/** Poses the legs: from angles, or from where the sole stands. */
final class Legs {

    private Legs() {
    }

    static void pose(Pose pose, Turn pelvis, Joints out) {
        for (Side side : Side.values()) {
            leg(pose, pelvis, side, out);
        }
    }

    /** Where a leg is before its foot and flesh are laid round it. */
    private record Bones(Vec3 knee, Vec3 ankle, Turn foot, double toeDegrees) {
    }

    private static void leg(Pose pose, Turn pelvis, Side side, Joints out) {
        Vec3 hip = out.point("hip", side);
        Bones bones = pose.value("foot", side) instanceof List<?> sole ? standing(pose, pelvis, side, sole, out) : hanging(pose, pelvis, side, hip);
        int k = side.sign();
        Local foot = new Local(bones.foot(), bones.ankle());
        Vec3 knee = bones.knee();
        Vec3 ankle = bones.ankle();
        out.put(side.of("knee"), knee);
        out.put(side.of("ankle"), ankle);
        Vec3 heel = foot.at(-Lengths.HEEL + 1.2, -Lengths.ANKLE_HEIGHT + 1.5, 0);
        Vec3 ball = foot.at(Lengths.BALL_OF_FOOT, -Lengths.ANKLE_HEIGHT + 1.2, 0);
        Vec3 toe = ball.plus(bones.foot().of(Turn.aboutZ(bones.toeDegrees())).of(Lengths.TOES, -.3, 0));
        out.put(side.of("heel"), heel);
        out.put(side.of("ball"), ball);
        out.put(side.of("toe"), toe);
        out.put(side.of("sole"), foot.at(3, -Lengths.ANKLE_HEIGHT, 0));
        Vec3 thigh = knee.minus(hip);
        Vec3 shank = ankle.minus(knee);
        surfaces(pelvis, side, hip, knee, ankle, out);
        Vec3 calf = heel.minus(ball).across(shank.unit()).unit();
        String leg = side.of("leg");
        out.add(side.of("thigh"), leg, new Ball(hip.plus(thigh.times(.04)), 4.9), new Ball(hip.plus(thigh.times(.4)), 4.5), new Ball(knee, 3.3));
        out.add(side.of("shank"), leg, new Ball(knee, 3.2), new Ball(knee.plus(shank.times(.3)).plus(calf.times(.7)), 3.1), new Ball(ankle, 2));
        Ball outer = new Ball(ball.plus(bones.foot().of(0, .1, .8 * k)), 1.2);
        Ball inner = new Ball(ball.plus(bones.foot().of(0, .1, -.8 * k)), 1.2);
        out.add(side.of("foot"), leg, foot.ball(-.2, -.2, 0, 2), new Ball(heel, 1.5), foot.ball(3.5, -1.4, .3 * k, 1.9), outer, inner);
        out.add(side.of("toes"), leg, outer, inner, new Ball(toe.plus(bones.foot().of(0, 0, .5 * k)), .95),
                new Ball(toe.plus(bones.foot().of(0, 0, -.5 * k)), .95));
    }

    /** The sole stands at a place; a positive heel angle lifts the heel about the ball, a negative one the toes about the heel. */
    private static Bones standing(Pose pose, Turn pelvis, Side side, List<?> sole, Joints out) {
        int k = side.sign();
        double[] at = Values.numbers("foot", sole);
        Vec3 place = at.length == 2 ? new Vec3(at[0], 0, at[1] * (pose.ownSide("foot", side) ? 1 : k)) : new Vec3(at[0], at[1], at[2]);
        double heel = pose.angle("heel", side);
        Turn yaw = Turn.aboutY(-pose.angle("foot.yaw", side) * k);
        Turn foot = yaw.of(Turn.aboutZ(-heel));
        double pivotX = heel > 0 ? Lengths.BALL_OF_FOOT : -Lengths.HEEL;
        Vec3 ankle = place.plus(yaw.of(pivotX, 0, 0)).minus(foot.of(pivotX, -Lengths.ANKLE_HEIGHT, 0));
        Vec3 pole = pose.value("knee.pole", side) instanceof List<?> given ? out.at(given) : pelvis.of(1, 0, k * .12).plus(new Vec3(.3, 0, 0));
        TwoBone leg = TwoBone.reach(out.point("hip", side), ankle, Lengths.THIGH, Lengths.SHANK, pole, "leg " + side, out);
        return new Bones(leg.middle(), leg.end(), foot, Math.max(heel, 0) + pose.angle("toe.up", side));
    }

    private static Bones hanging(Pose pose, Turn pelvis, Side side, Vec3 hip) {
        int k = side.sign();
        Turn thigh = pelvis.of(Turn.aboutZ(pose.angle("hip.flex", side))).of(Turn.aboutX(-k * pose.angle("hip.abd", side)))
                .of(Turn.aboutY(-k * pose.angle("hip.rot", side)));
        Vec3 knee = hip.plus(thigh.of(0, -Lengths.THIGH, 0));
        Turn shank = thigh.of(Turn.aboutZ(-pose.angle("knee.flex", side)));
        Vec3 ankle = knee.plus(shank.of(0, -Lengths.SHANK, 0));
        Turn foot = shank.of(Turn.aboutY(-k * pose.angle("foot.turn", side))).of(Turn.aboutZ(pose.angle("ankle.flex", side)));
        return new Bones(knee, ankle, foot, pose.angle("toes.ext", side));
    }

    /** Points on the skin that hands rest on. */
    private static void surfaces(Turn pelvis, Side side, Vec3 hip, Vec3 knee, Vec3 ankle, Joints out) {
        Vec3 thigh = knee.minus(hip);
        Vec3 middle = hip.plus(thigh.times(.55));
        Vec3 back = pelvis.of(-1, 0, 0).across(thigh.unit()).unit();
        out.put(side.of("thigh"), middle);
        out.put(side.of("shin"), knee.plus(ankle.minus(knee).times(.45)));
        out.put(side.of("thighback"), middle.plus(back.times(4.2)));
        out.put(side.of("thightop"), middle.minus(back.times(4.6)));
        Vec3 bend = knee.minus(hip.towards(ankle, .5));
        out.put(side.of("kneetop"), bend.length() > 2 ? knee.plus(bend.unit().times(3.8)) : knee.minus(back.times(3.6)));
    }
}
