package org.steadwork.exposure.method;

import java.util.List;

/**
 * Rapid office strain assessment: a final score from 1 to 10 for one person at one screen work place.
 *
 * <p>For office screen work only. Equal weights, no interplay with body size; correlates modestly with discomfort (about 15 % of its
 * variance), not with disorders. Not for tablets, standing desks or shared places without scoring each person.
 * Its charts are from memory and must be checked before a clinic relies on them.
 * Source: Sonne, Villalta and Andrews 2012, Applied Ergonomics 43:98-108.
 */
public final class Rosa {

    /** From this score on the authors ask for action. */
    public static final int ACT = 5;

    private final ScoreTable chair;
    private final ScoreTable monitorPhone;
    private final ScoreTable mouseKeyboard;

    public Rosa(ScoreTable chair, ScoreTable monitorPhone, ScoreTable mouseKeyboard) {
        this.chair = chair;
        this.monitorPhone = monitorPhone;
        this.mouseKeyboard = mouseKeyboard;
    }

    /**
     * The item scores.
     *
     * @param seatHeight 1 to 5, seatDepth 1 to 3 (together at most 8), armrest 1 to 5, backrest 1 to 4 (together at most 9)
     * @param chairDuration −1, 0 or 1
     * @param monitor 0 to 7, telephone 0 to 6, mouse 0 to 7, keyboard 0 to 7, each with its duration; 0 when not used
     */
    public record Station(int seatHeight, int seatDepth, int armrest, int backrest, int chairDuration, int monitor, int telephone, int mouse,
            int keyboard) {

        public Station {
            Checks.within("Seat height", seatHeight, 1, 5);
            Checks.within("Seat depth", seatDepth, 1, 3);
            Checks.within("Armrest", armrest, 1, 5);
            Checks.within("Backrest", backrest, 1, 4);
            Checks.within("Duration on the chair", chairDuration, -1, 1);
            Checks.within("Monitor", monitor, 0, 7);
            Checks.within("Telephone", telephone, 0, 6);
            Checks.within("Mouse", mouse, 0, 7);
            Checks.within("Keyboard", keyboard, 0, 7);
        }
    }

    /** Final score, and the working: chair with its duration, the two charts, peripherals, final. */
    public record Result(int score, int chair, int peripherals, List<Step> working) {

        public String band() {
            return score >= ACT ? "Act now (the authors' level)" : score >= 3 ? "Could be improved" : "Negligible";
        }
    }

    public Result of(Station s) {
        int chart = chair.at(s.seatHeight() + s.seatDepth(), s.armrest() + s.backrest());
        int chairScore = chart + s.chairDuration();
        int screen = monitorPhone.at(s.telephone(), s.monitor());
        int hands = mouseKeyboard.at(s.mouse(), s.keyboard());
        int peripherals = Math.max(screen, hands);
        int score = Math.max(chairScore, peripherals);
        return new Result(score, chairScore, peripherals, List.of(new Step("Chair", "chair chart", chart),
                new Step("with its duration", "chart + duration", chairScore), new Step("Monitor and telephone", "chart", screen),
                new Step("Mouse and keyboard", "chart", hands), new Step("Peripherals", "the larger", peripherals),
                new Step("Final", "the larger of chair and peripherals", score)));
    }

    /**
     * The duration point of an item: −1, 0 or 1.
     *
     * @param longestSpellMinutes longest use in one piece, min in [0, 1440]
     * @param dayMinutes use a day, min in [longest spell, 1440]; where the two rules differ the higher holds (our rule)
     */
    public static int duration(double longestSpellMinutes, double dayMinutes) {
        Checks.within("Longest spell", longestSpellMinutes, 0, 1440, "min");
        Checks.within("Use a day", dayMinutes, longestSpellMinutes, 1440, "min");
        int bySpell = longestSpellMinutes > 60 ? 1 : longestSpellMinutes < 30 ? -1 : 0;
        int byDay = dayMinutes > 240 ? 1 : dayMinutes < 60 ? -1 : 0;
        return Math.max(bySpell, byDay);
    }
}
