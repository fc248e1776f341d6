package org.steadwork.drawing.figure;

/**
 * A limb of two bones placed from its root to a target: the middle joint lies on the side of the pole, the end on the target
 * or, when the target is too far or too near, as close as the bones reach.
 */
record TwoBone(Vec3 middle, Vec3 end) {

    private static final double NEARLY_STRAIGHT = 0.01;
    private static final double SHORTEST_FOLD = 0.5;
    private static final double MISS_TO_REPORT = 0.6;
    private static final double MOST_BEND_DEGREES = 152;

    static TwoBone reach(Vec3 root, Vec3 target, double first, double second, Vec3 pole, String limb, Joints out) {
        Vec3 way = target.minus(root);
        Vec3 along = way.unit();
        double distance = way.length();
        if (distance > first + second - NEARLY_STRAIGHT) {
            if (distance > first + second + MISS_TO_REPORT) {
                out.warn("%s: target %.1f out of reach".formatted(limb, distance - first - second));
            }
            distance = first + second - NEARLY_STRAIGHT;
        }
        distance = Math.max(distance, Math.abs(first - second) + SHORTEST_FOLD);
        double cosine = clamp((first * first + distance * distance - second * second) / (2 * first * distance));
        Vec3 outward = pole.across(along).unit();
        Vec3 middle = root.plus(along.times(first * cosine)).plus(outward.times(first * Math.sqrt(1 - cosine * cosine)));
        double inner = clamp((first * first + second * second - distance * distance) / (2 * first * second));
        double bend = 180 - Math.toDegrees(Math.acos(inner));
        if (bend > MOST_BEND_DEGREES) {
            out.warn("%s: bends %.0f degrees".formatted(limb, bend));
        }
        return new TwoBone(middle, root.plus(along.times(distance)));
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }
}
