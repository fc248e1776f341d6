package org.steadwork.drawing.figure;

import java.util.List;
import java.util.Map;

/** The head as it is drawn: its attitude and the balls of skull, jaw, hair and nose, the ears and the eyes. */
record Head(Turn turn, List<Ball> skull, List<Ball> jaw, List<Ball> hair, List<Ball> nose, Map<Side, Vec3> ears, Map<Side, Vec3> eyes) {

    static Head place(Turn turn, Vec3 joint, Joints out) {
        Local head = new Local(turn, joint);
        out.put("head", head.at(.6, 5, 0));
        out.put("head_top", head.at(0, 10.6, 0));
        out.put("forehead", head.at(6.9, 6.6, 0));
        out.put("back_head", head.at(-6, 6, 0));
        out.put("chin", head.at(5.4, -1.2, 0));
        out.put("nose", head.at(7.2, 3, 0));
        out.put("nape", head.at(-4.4, 1.6, 0));
        out.put("eyes", head.at(6.2, 4.6, 0));
        for (Side side : Side.values()) {
            out.put(side.of("temple"), head.at(1, 6, side.sign() * 5.4));
            out.put(side.of("ear"), head.at(-.2, 3.8, side.sign() * 5));
        }
        List<Ball> skull = List.of(head.ball(-1.1, 5.4, 0, 4.9), head.ball(1.7, 5.5, 0, 4.7));
        List<Ball> jaw = List.of(head.ball(1.7, 5.2, 0, 4.6), head.ball(3, .9, 1.2, 2.3), head.ball(3, .9, -1.2, 2.3));
        List<Ball> hair = List.of(head.ball(-1.9, 5.9, 0, 5), head.ball(1, 7.2, 0, 4.7), head.ball(-3.2, 2.8, 0, 3.2));
        List<Ball> nose = List.of(head.ball(5.4, 4.4, 0, .7), head.ball(6.5, 3, 0, .8));
        out.add("head", "head", skull.get(0), skull.get(1), jaw.get(0), jaw.get(1), jaw.get(2));
        return new Head(turn, skull, jaw, hair, nose,
                Map.of(Side.R, head.at(-.6, 3.9, 4.7), Side.L, head.at(-.6, 3.9, -4.7)),
                Map.of(Side.R, head.at(5.6, 5, 2), Side.L, head.at(5.6, 5, -2)));
    }
}
