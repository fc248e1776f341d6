package org.steadwork.exposure.method;

import java.util.List;

/**
 * Rapid upper limb assessment of one posture of one side: a grand score from 1 to 7 and its action level.
 *
 * <p>A snapshot: no weighting by time, no recovery, vibration, contact stress or fingers. Seated screen work mostly scores 3 or 4, so it
 * separates office work places poorly. Not a diagnosis, not for comparing people.
 * Source: McAtamney and Corlett 1993, Applied Ergonomics 24:91-99.
 */
public final class Rula {

    private static final int CAP_C = 8;
    private static final int CAP_D = 7;

    private final ScoreTable a;
    private final ScoreTable b;
    private final ScoreTable c;

    public Rula(ScoreTable a, ScoreTable b, ScoreTable c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /**
     * The posture scores with their additions already made.
     *
     * @param upperArm 1 to 6
     * @param lowerArm 1 to 3
     * @param wrist 1 to 4
     * @param twist 1 mid-range, 2 near its end
     * @param armUse muscle use (0 or 1) plus force (0 to 3) of the arm, 0 to 4
     * @param neck 1 to 6
     * @param trunk 1 to 6
     * @param legs 1 supported and balanced, 2 not
     * @param bodyUse muscle use plus force of neck, trunk and legs, 0 to 4
     */
    public record Posture(int upperArm, int lowerArm, int wrist, int twist, int armUse, int neck, int trunk, int legs, int bodyUse) {

        public Posture {
            Checks.within("Upper arm", upperArm, 1, 6);
            Checks.within("Lower arm", lowerArm, 1, 3);
            Checks.within("Wrist", wrist, 1, 4);
            Checks.within("Wrist twist", twist, 1, 2);
            Checks.within("Muscle use and force of the arm", armUse, 0, 4);
            Checks.within("Neck", neck, 1, 6);
            Checks.within("Trunk", trunk, 1, 6);
            Checks.within("Legs", legs, 1, 2);
            Checks.within("Muscle use and force of the body", bodyUse, 0, 4);
        }
    }

    /** Grand score 1 to 7, action level 1 to 4, and the working. */
    public record Result(int score, int level, List<Step> working) {

        public String band() {
            return switch (level) {
                case 1 -> "Acceptable if not kept up or repeated for long";
                case 2 -> "Look further; change may be needed";
                case 3 -> "Look and change soon";
                default -> "Look and change now";
            };
        }
    }

    public Result of(Posture p) {
        int scoreA = a.at(p.upperArm(), p.lowerArm(), p.wrist(), p.twist());
        int scoreC = scoreA + p.armUse();
        int scoreB = b.at(p.neck(), p.trunk(), p.legs());
        int scoreD = scoreB + p.bodyUse();
        int grand = c.at(Math.min(scoreC, CAP_C), Math.min(scoreD, CAP_D));
        int level = grand <= 2 ? 1 : grand <= 4 ? 2 : grand <= 6 ? 3 : 4;
        return new Result(grand, level, List.of(new Step("Arm and wrist", "table A", scoreA), new Step("with muscle use and force", "A + use", scoreC),
                new Step("Neck, trunk, legs", "table B", scoreB), new Step("with muscle use and force", "B + use", scoreD),
                new Step("Grand score", "table C", grand)));
    }
}
