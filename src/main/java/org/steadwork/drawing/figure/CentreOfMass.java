package org.steadwork.drawing.figure;

/** The figure's centre of mass, from rounded shares of body mass; only to see whether a pose would fall over. Common practice, no source. */
final class CentreOfMass {

    private static final double ALONG_A_LIMB = .45;

    private Vec3 sum = Vec3.ORIGIN;
    private double mass;

    private CentreOfMass() {
    }

    static Vec3 of(Joints joints) {
        CentreOfMass body = new CentreOfMass();
        body.add(joints.point("head"), 7);
        body.add(joints.point("root").towards(joints.point("neck_base"), .5), 46);
        body.add(joints.point("lumbar"), 4);
        for (Side side : Side.values()) {
            body.limb(joints, side, "shoulder", "elbow", 2.7);
            body.limb(joints, side, "elbow", "wrist", 1.6);
            body.add(joints.point("palm", side), .6);
            body.limb(joints, side, "hip", "knee", 12);
            body.limb(joints, side, "knee", "ankle", 4.4);
            body.add(joints.point("ball", side), 1.4);
        }
        return body.sum.times(1 / body.mass);
    }

    private void limb(Joints joints, Side side, String from, String to, double share) {
        add(joints.point(from, side).towards(joints.point(to, side), ALONG_A_LIMB), share);
    }

    private void add(Vec3 at, double share) {
        sum = sum.plus(at.times(share));
        mass += share;
    }
}
