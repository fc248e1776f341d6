package org.steadwork.workplace.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How sure a fit is, given the errors of the measures it rests on: what comes out when the body is drawn again and again
 * within those errors. A share is in [0, 1]; its own error from drawing is at most 0.016 with 1,000 draws. Errors of the readings
 * at the work place, and of the population an estimate comes from, are not in it.
 *
 * @param draws how many bodies were drawn
 * @param settings where each best setting lies, in mm; a part that is absent or not looked at is left out
 * @param now today's deviations with their verdicts; one that was not looked at is left out
 * @param proposed the deviations that the proposed settings leave, likewise
 * @param serves share of the draws in which some setting keeps the desk off the thigh
 * @param equipment every piece or list of the fit's answer, in its order
 * @param settling the one measurement that would make it surest; empty when none would change it
 */
public record Sureness(int draws, Map<Part, Spread> settings, Map<Deviation, Judged> now, Map<Deviation, Judged> proposed, double serves,
        List<Recommended> equipment, Optional<Settling> settling) {

    /** How often the body is drawn unless said otherwise. */
    public static final int DRAWS = 1000;

    /** Where the draws begin unless said otherwise; the same start gives the same answer. */
    public static final long SEED = 20_261_125;

    /**
     * A deviation under the draws.
     *
     * @param spread in mm
     * @param verdict with the measures as they stand
     * @param shares of the draws with each verdict, adding up to 1
     */
    public record Judged(Spread spread, Verdict verdict, Map<Verdict, Double> shares) {

        /** Returns the share of the draws in which the verdict is the same. */
        public double holds() {
            return shares.get(verdict);
        }
    }

    /**
     * Equipment of the fit's answer under the draws.
     *
     * @param pieces one, or the shortest list
     * @param needed share of the draws in which something is left out of range without it
     * @param helps share in which it removes some of that
     * @param suffices share in which nothing is left out of range with it (or nothing was without)
     */
    public record Recommended(List<Equipment> pieces, double needed, double helps, double suffices) {
    }

    /** Returns the share for these pieces, in this order, if the fit's answer has them. */
    public Optional<Recommended> of(List<Equipment> pieces) {
        return equipment.stream().filter(recommended -> recommended.pieces().equals(pieces)).findFirst();
    }

    /**
     * Draws the body {@code draws} times and fits each; about 10 ms for 1,000 draws.
     *
     * @param fit the answer for the measures as they stand
     * @param together how the errors of the estimates go together; {@link ErrorCorrelations#NONE} when none is estimated
     * @param draws in [100, 100,000]
     * @throws IllegalArgumentException for any other number of draws
     */
    public static Sureness of(Person person, Workstation station, Targets targets, FitResult fit, ErrorCorrelations together, int draws, long seed) {
        if (!(draws >= 100 && draws <= 100_000)) {
            throw new IllegalArgumentException("The body must be drawn from 100 to 100,000 times, but was to be drawn " + draws + " times");
        }
        return new SurenessRun(new FitModel(person, station, targets), fit, together, draws, seed).result();
    }
}
