package org.steadwork.caseload;

import java.time.LocalDate;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CloseReason;
import org.steadwork.casefile.WorkStatusCode;

/**
 * One case summed up: what was recorded, without a judgement, which the content makes when it is read. Null is "not known" throughout.
 *
 * @param region main region: the one with the highest worst pain in the first report
 * @param regions every region ever reported, one bit each in the order of {@link BodyRegion}
 * @param lastContactOn the latest of opening, visits attended, reports, scores and work statuses
 * @param attended visits that took place; {@code missed} those missed or cancelled late
 * @param painFirst worst pain, 0 to 10; {@code painLast} null without a later day
 * @param measure key of the instrument of the case's region; {@code measureRegion} whose thresholds judge it
 * @param offOn first day off work for this problem
 * @param fullOn first day of full duties after it that lasted, or that are still held; {@code fullUntil} their last day, null while held
 * @param daysOff calendar days off up to the last contact; null without a work status
 * @param screen how far the red-flag screen of the first visit got
 * @param findings criteria found, parted by blanks, each followed by + when done, by ! when asked for and not done
 * @param linkedFirst mean worst pain over linked zones rated in the first and the last report
 */
record CaseOutcome(long caseId, long patientId, long clinicianId, Long employerId, LocalDate openedOn, LocalDate closedOn,
        CloseReason closeReason, BodyRegion region, int regions, LocalDate referredOn, LocalDate firstVisitOn, LocalDate lastContactOn,
        int attended, int missed, Integer painFirst, Integer painLast, String measure, String measureRegion, Double measureFirst,
        Double measureLast, LocalDate offOn, LocalDate fullOn, LocalDate fullUntil, Integer daysOff, WorkStatusCode workFirst,
        WorkStatusCode workLast, Screening screen, boolean assessed, String findings, Double linkedFirst, Double linkedLast,
        Double unlinkedFirst, Double unlinkedLast) {

    /** How far the first red-flag screen got. */
    enum Screening { NONE, OPEN, COMPLETE }

    boolean reported(BodyRegion asked) {
        return (regions & 1 << asked.ordinal()) != 0;
    }

    boolean painPair() {
        return painFirst != null && painLast != null;
    }

    boolean measurePair() {
        return measureFirst != null && measureLast != null;
    }
}
