package org.steadwork.casefile.workplan;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * What the rules say about the next step of a graded return; a clinician decides.
 *
 * @param move up, hold, back, stop, or ask when something is not known
 * @param reasons what led there, in words
 * Source: common practice, no published source; the numbers are habits.
 */
public record NextStep(Move move, List<String> reasons) {

    private static final int HIGHEST_PAIN_AT_WORK = 5;
    private static final int DAYS_MISSED_FOR_BACK = 2;

    /** Where to go from here. */
    public enum Move { UP, HOLD, BACK, STOP, ASK }

    public NextStep {
        reasons = List.copyOf(reasons);
    }

    /**
     * Weighs a week of a plan.
     *
     * @param worstPainAtWork 0 to 10, null when not asked
     * @param settledByMorning whether pain had settled by the next morning
     * @param workedMinutes in the week, null when not known; plannedMinutes above 0
     * @param daysMissed 0 to 7
     * @param newRedFlag a new red flag stops the plan
     */
    public static NextStep of(Integer worstPainAtWork, Answer settledByMorning, Integer workedMinutes, int plannedMinutes,
            int daysMissed, boolean newRedFlag) {
        if (worstPainAtWork != null && (worstPainAtWork < 0 || worstPainAtWork > 10)) {
            throw new IllegalArgumentException("Pain at work must be 0 to 10, but is " + worstPainAtWork);
        }
        if (newRedFlag) {
            return new NextStep(Move.STOP, List.of("a new red flag"));
        }
        List<String> failed = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        if (worstPainAtWork == null) {
            unknown.add("pain at work not asked");
        } else if (worstPainAtWork > HIGHEST_PAIN_AT_WORK) {
            failed.add("pain at work " + worstPainAtWork + " of 10, over " + HIGHEST_PAIN_AT_WORK);
        }
        if (settledByMorning == Answer.NO) {
            failed.add("not settled by the next morning");
        } else if (settledByMorning != Answer.YES) {
            unknown.add("settling by the next morning " + settledByMorning.label());
        }
        if (workedMinutes == null) {
            unknown.add("hours worked not entered");
        } else if (workedMinutes * 100L < plannedMinutes * 80L) {
            failed.add("under 80 % of the planned hours worked");
        }
        if (daysMissed >= DAYS_MISSED_FOR_BACK) {
            failed.add(daysMissed + " days missed");
            return new NextStep(Move.BACK, failed);
        }
        if (failed.size() >= 2) {
            return new NextStep(Move.BACK, failed);
        }
        if (failed.size() == 1) {
            failed.addAll(unknown);
            return new NextStep(Move.HOLD, failed);
        }
        return unknown.isEmpty() ? new NextStep(Move.UP, List.of("pain at work " + worstPainAtWork + " of 10, settled by morning, hours worked"))
                : new NextStep(Move.ASK, unknown);
    }
}
