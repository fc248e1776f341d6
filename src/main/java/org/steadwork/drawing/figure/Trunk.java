package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** The posed trunk: the attitudes that legs and arms hang on, and the head. */
record Trunk(Turn pelvis, Turn chest, Head head) {

    static Trunk pose(Pose pose, Vec3 root, Joints out) {
        Turn pelvisTurn = Turn.aboutY(-pose.angle("yaw")).of(Turn.aboutZ(-pose.angle("pitch"))).of(Turn.aboutX(pose.angle("roll")));
        Local pelvis = new Local(pelvisTurn, root);
        out.put("root", root);
        for (Side side : Side.values()) {
            out.put(side.of("hip"), pelvis.at(0, 0, side.sign() * Lengths.HALF_HIPS));
            out.put(side.of("hipback"), pelvis.at(-4.5, 4, side.sign() * 7));
        }
        out.add("pelvis", "trunk", pelvis.ball(-.4, 1.2, 4.2, 5.9), pelvis.ball(-.4, 1.2, -4.2, 5.9),
                pelvis.ball(0, 7, 4, 5.3), pelvis.ball(0, 7, -4, 5.3));
        Local loin = new Local(bent(pelvisTurn, "lumbar", pose), pelvis.at(-.6, Lengths.PELVIS, 0));
        belly(pose, pelvis, loin, out);
        Turn chestTurn = bent(loin.turn(), "chest", pose);
        Local chest = new Local(chestTurn, loin.at(0, Lengths.LOWER_TRUNK, 0));
        out.put("mid_back", chest.origin());
        Vec3 neckBase = chest(pose, chest, out);
        Head head = neck(pose, chestTurn, neckBase, out);
        return new Trunk(pelvisTurn, chestTurn, head);
    }

    private static void belly(Pose pose, Local pelvis, Local loin, Joints out) {
        out.put("lumbar", loin.origin());
        double bulge = pose.angle("belly.out");
        List<Ball> balls = new ArrayList<>(List.of(pelvis.ball(0, 7.5, 3.9, 5.2), pelvis.ball(0, 7.5, -3.9, 5.2),
                loin.ball(.3, 4.5, 3.9, 5.1), loin.ball(.3, 4.5, -3.9, 5.1), loin.ball(.4, 9, 4.2, 5.2), loin.ball(.4, 9, -4.2, 5.2)));
        if (bulge != 0) {
            balls.add(loin.ball(1.2 + bulge, 2.5, 0, 4.6));
        }
        out.add("belly", "trunk", balls.toArray(Ball[]::new));
        out.put("belly", loin.at(6.2 + bulge, 3, 0));
        out.put("low_back", loin.at(-5.5, 2, 0));
    }

    private static Vec3 chest(Pose pose, Local chest, Joints out) {
        out.add("chest", "trunk", chest.ball(.4, 0, 4.3, 5.3), chest.ball(.4, 0, -4.3, 5.3), chest.ball(.7, 5.2, 5.6, 6),
                chest.ball(.7, 5.2, -5.6, 6), chest.ball(-.3, 9.4, 6.6, 3.6), chest.ball(-.3, 9.4, -6.6, 3.6));
        out.put("chest", chest.at(7, 5, 0));
        out.put("upper_back", chest.at(-5.6, 6, 0));
        out.put("sternum", chest.at(5.5, 8, 0));
        Vec3 neckBase = chest.at(-1, Lengths.UPPER_TRUNK + 1.2, 0);
        out.put("neck_base", neckBase);
        for (Side side : Side.values()) {
            girdle(pose, chest, neckBase, side, out);
        }
        return neckBase;
    }

    private static void girdle(Pose pose, Local chest, Vec3 neckBase, Side side, Joints out) {
        int k = side.sign();
        double upDegrees = pose.angle("blade.up", side);
        double forwardDegrees = pose.angle("blade.fwd", side);
        double up = Math.toRadians(upDegrees);
        double forward = Math.toRadians(forwardDegrees);
        double half = Lengths.HALF_SHOULDERS;
        Vec3 shoulder = chest.at(-.3 + half * Math.sin(forward), 9.6 + half * Math.sin(up), k * half * Math.cos(up) * Math.cos(forward));
        out.put(side.of("shoulder"), shoulder);
        out.put(side.of("breast"), chest.at(6.5, 5, k * 6));
        out.add(side.of("girdle"), "trunk", new Ball(neckBase.plus(chest.turn().of(0, .6, k * 1.2)), 2.7),
                new Ball(shoulder.plus(chest.turn().of(0, .5, -k * 1.5)), 2.9), chest.ball(-.3, 6, k * 7, 4.2));
        // the blade slides round the ribs: forward moves it outward, a shrug moves it up
        double x = -6.4;
        double rise = upDegrees * .09;
        double outward = k * (4.6 + forwardDegrees * .085);
        out.put(side.of("scapmid"), chest.at(x - .4, 5.5 + rise, outward + k));
        if (pose.angle("show_blades") != 0) {
            out.add(side.of("scap"), side.of("scap"), chest.ball(x, 9 + rise, outward - k * .8, .9),
                    chest.ball(x, 8.6 + rise, outward + k * 3.6, 1.1), chest.ball(x - .6, 1.5 + rise, outward + k * .6, 1));
        }
    }

    private static Head neck(Pose pose, Turn chestTurn, Vec3 neckBase, Joints out) {
        Turn neckTurn = bent(chestTurn, "neck", pose);
        double glide = pose.angle("neck.glide");
        Vec3 foot = neckBase.plus(chestTurn.of(glide * .25, 0, 0));
        Vec3 joint = foot.plus(neckTurn.of(0, Lengths.NECK, 0)).plus(chestTurn.of(glide * .75, 0, 0));
        out.add("neck", "trunk", new Ball(foot, 3), new Ball(joint, 2.8));
        return Head.place(bent(neckTurn, "head", pose), joint, out);
    }

    /** Turn, then bend forward, then to the side, each from the part below. */
    private static Turn bent(Turn below, String part, Pose pose) {
        return below.of(Turn.aboutY(-pose.angle(part + ".turn"))).of(Turn.aboutZ(-pose.angle(part + ".flex")))
                .of(Turn.aboutX(pose.angle(part + ".side")));
    }
}
