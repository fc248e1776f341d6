package org.steadwork.drawing;

/**
 * A small line figure from the side, facing right, with one part of the body picked out; stands beside a posture's description.
 * Angles are in degrees; forward is positive.
 */
public final class PostureSketch {

    /** The part that is picked out. */
    public enum Part {
        TRUNK, HEAD, UPPER_ARM, FOREARM
    }

    /**
     * The posture.
     *
     * @param trunk from upright, [−90, 180]
     * @param head from the line of the trunk, [−90, 90]
     * @param arm upper arm from hanging down along the trunk, [−90, 180]
     * @param elbow bend of the elbow, [0, 150]
     * @param seated thighs level instead of standing
     */
    public record Posture(double trunk, double head, double arm, double elbow, boolean seated) {
    }

    private static final double SIZE = 100;
    private static final double LEG = 38;
    private static final double TRUNK = 30;
    private static final double NECK = 9;
    private static final double HEAD_RADIUS = 7;
    private static final double UPPER_ARM = 17;
    private static final double FOREARM = 16;
    private static final String QUIET = "#66707c";
    private static final String PICKED = "#6b2d5c";

    private final SvgMarkup svg = new SvgMarkup();

    private PostureSketch() {
    }

    /** Draws the figure, 100 by 100 units; it is decoration beside words and so hidden from readers of the page. */
    public static String of(Posture posture, Part picked) {
        return new PostureSketch().draw(posture, picked);
    }

    private String draw(Posture p, Part picked) {
        svg.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", "0 0 " + SvgMarkup.number(SIZE) + " " + SvgMarkup.number(SIZE), "aria-hidden", "true",
                "fill", "none", "stroke", QUIET, "stroke-width", 4.0, "stroke-linecap", "round");
        double[] hip = {42 - Math.max(0, p.trunk()) / 6, p.seated() ? 66 : 57};
        double[] shoulder = step(hip, p.trunk(), TRUNK);
        double[] crown = step(shoulder, p.trunk() + p.head(), NECK + HEAD_RADIUS);
        svg.empty("line", "x1", 8.0, "y1", 96.0, "x2", 92.0, "y2", 96.0, "stroke-width", 1.5);
        if (p.seated()) {
            double[] knee = {hip[0] + 24, hip[1]};
            line(hip, knee, false);
            line(knee, new double[] {knee[0], 94}, false);
            svg.empty("line", "x1", hip[0] - 8, "y1", hip[1] + 5, "x2", hip[0] + 16, "y2", hip[1] + 5, "stroke-width", 2.0);
            svg.empty("line", "x1", hip[0] - 8, "y1", hip[1] + 5, "x2", hip[0] - 9, "y2", hip[1] - 26, "stroke-width", 2.0);
        } else {
            line(hip, new double[] {hip[0], hip[1] + LEG - 1}, false);
        }
        line(hip, shoulder, picked == Part.TRUNK);
        line(shoulder, step(shoulder, p.trunk() + p.head(), NECK), picked == Part.HEAD);
        svg.empty("circle", "cx", crown[0], "cy", crown[1], "r", HEAD_RADIUS, "stroke", picked == Part.HEAD ? PICKED : QUIET,
                "fill", picked == Part.HEAD ? PICKED : "none");
        double armLine = 180 + p.trunk() - p.arm();
        double[] near = step(shoulder, p.trunk() + 180, 3);
        double[] elbow = step(near, armLine, UPPER_ARM);
        line(near, elbow, picked == Part.UPPER_ARM);
        line(elbow, step(elbow, armLine - p.elbow(), FOREARM), picked == Part.FOREARM);
        return svg.close().done();
    }

    /** A point so far from another, in a direction counted from straight up, forward positive. */
    private static double[] step(double[] from, double degrees, double length) {
        return new double[] {from[0] + length * Math.sin(Math.toRadians(degrees)), from[1] - length * Math.cos(Math.toRadians(degrees))};
    }

    private void line(double[] from, double[] to, boolean picked) {
        svg.empty("line", "x1", from[0], "y1", from[1], "x2", to[0], "y2", to[1], "stroke", picked ? PICKED : null, "stroke-width", picked ? 6.0 : null);
    }
}
