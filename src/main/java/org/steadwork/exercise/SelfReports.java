package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.PainRule;

/** Takes what patients ticked themselves as the adherence of a week. */
@ApplicationScoped
public class SelfReports {

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    /**
     * Stores the seven days to a day, in place of what stood for them; an exercise that started later has no such week.
     *
     * @param highestPain highest pain after a session, [0, 10], or null
     */
    public void take(long caseId, long prescriptionId, LocalDate weekTo, Adherence adherence, Integer highestPain, String by) {
        prescriptions.inCase(caseId, prescriptionId).filter(given -> !weekTo.isBefore(given.startedOn())).ifPresent(given -> {
            AdherenceEntry entry = entries.on(given, weekTo).orElseGet(() -> new AdherenceEntry(given, weekTo));
            entry.report(adherence, highestPain, PainRule.Morning.NOT_ASKED, by);
            entries.persist(entry);
        });
    }
}
