package org.steadwork.exposure.method;

import java.util.List;

/**
 * Rapid entire body assessment of one posture: a score from 1 to 15 and its action level from 0 to 4.
 *
 * <p>For whole-body, unforeseeable postures and care work. One moment only; its load bands ignore distance. Poor for seated office work,
 * hand-intensive work and driving; the authors called its validation preliminary.
 * Source: Hignett and McAtamney 2000, Applied Ergonomics 31:201-205.
 */
public final class Reba {

    private final ScoreTable a;
    private final ScoreTable b;
    private final ScoreTable c;

    public Reba(ScoreTable a, ScoreTable b, ScoreTable c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /**
     * The posture scores with their additions already made.
     *
     * @param trunk 1 to 5
     * @param neck 1 to 3
     * @param legs 1 to 4
     * @param load 0 to 3
     * @param upperArm 1 to 6
     * @param lowerArm 1 to 2
     * @param wrist 1 to 3
     * @param coupling 0 good to 3 unacceptable
     * @param activity 0 to 3: static, repeated, fast or unstable, a point each
     */
    public record Posture(int trunk, int neck, int legs, int load, int upperArm, int lowerArm, int wrist, int coupling, int activity) {

        public Posture {
            Checks.within("Trunk", trunk, 1, 5);
            Checks.within("Neck", neck, 1, 3);
            Checks.within("Legs", legs, 1, 4);
            Checks.within("Load", load, 0, 3);
            Checks.within("Upper arm", upperArm, 1, 6);
            Checks.within("Lower arm", lowerArm, 1, 2);
            Checks.within("Wrist", wrist, 1, 3);
            Checks.within("Coupling", coupling, 0, 3);
            Checks.within("Activity", activity, 0, 3);
        }
    }

    /** Score 1 to 15, action level 0 to 4, and the working: score A, score B, table C, sum. */
    public record Result(int score, int level, List<Step> working) {

        public String band() {
            return switch (level) {
                case 0 -> "Negligible";
                case 1 -> "Low; change may be needed";
                case 2 -> "Medium; change needed";
                case 3 -> "High; change soon";
                default -> "Very high; change now";
            };
        }
    }

    public Result of(Posture p) {
        int scoreA = a.at(p.trunk(), p.neck(), p.legs()) + p.load();
        int scoreB = b.at(p.upperArm(), p.lowerArm(), p.wrist()) + p.coupling();
        int scoreC = c.at(scoreA, scoreB);
        int score = scoreC + p.activity();
        int level = score == 1 ? 0 : score <= 3 ? 1 : score <= 7 ? 2 : score <= 10 ? 3 : 4;
        return new Result(score, level, List.of(new Step("Trunk, neck, legs and load", "table A + load", scoreA),
                new Step("Arm, wrist and coupling", "table B + coupling", scoreB), new Step("Together", "table C", scoreC),
                new Step("with activity", "C + activity", score)));
    }
}
