package org.steadwork.caseload;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.steadwork.casefile.WorkStatusCode;

/**
 * The course of one case's work status.
 *
 * @param offOn first day off for this problem, or null
 * @param fullOn first day of full duties after it that lasted or are still held; {@code fullUntil} null while they are held
 * @param daysOff days off up to the last contact, null when no status was recorded
 * @param first first recorded status that is known; {@code last} the last one
 */
record WorkSummary(LocalDate offOn, LocalDate fullOn, LocalDate fullUntil, Integer daysOff, WorkStatusCode first, WorkStatusCode last) {

    /** @param spells in order of time */
    static WorkSummary of(List<CaseFacts.Worked> spells, LocalDate lastContact, int sustainedDays) {
        LocalDate offOn = null;
        LocalDate fullOn = null;
        LocalDate fullUntil = null;
        long daysOff = 0;
        for (int i = 0; i < spells.size(); i++) {
            CaseFacts.Worked spell = spells.get(i);
            LocalDate end = end(spells, i);
            if (spell.code() == WorkStatusCode.OFF) {
                offOn = offOn == null ? spell.from() : offOn;
                LocalDate until = end == null || end.isAfter(lastContact) ? lastContact : end;
                daysOff += Math.max(0, ChronoUnit.DAYS.between(spell.from(), until) + 1);
            } else if (spell.code() == WorkStatusCode.FULL && offOn != null && fullOn == null
                    && (end == null || ChronoUnit.DAYS.between(spell.from(), end) + 1 >= sustainedDays)) {
                fullOn = spell.from();
                fullUntil = end;
            }
        }
        List<WorkStatusCode> known = spells.stream().map(CaseFacts.Worked::code).filter(WorkSummary::known).toList();
        return new WorkSummary(offOn, fullOn, fullUntil, spells.isEmpty() ? null : Integer.valueOf((int) daysOff), known.isEmpty() ? null : known.get(0),
                known.isEmpty() ? null : known.get(known.size() - 1));
    }

    /** Away for another reason says nothing of this problem, and unknown nothing at all. */
    private static boolean known(WorkStatusCode code) {
        return code != WorkStatusCode.UNKNOWN && code != WorkStatusCode.OFF_OTHER;
    }

    /** The last day of a spell: its own end or the day before the next; null while it is held. */
    private static LocalDate end(List<CaseFacts.Worked> spells, int i) {
        LocalDate end = spells.get(i).until();
        if (i + 1 < spells.size() && (end == null || !spells.get(i + 1).from().isAfter(end))) {
            end = spells.get(i + 1).from().minusDays(1);
        }
        return end;
    }
}
