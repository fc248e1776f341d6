package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.WorkingDay;

/** Gathers the programme of a case. */
@ApplicationScoped
class Programmes {

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    CaseSafeties safeties;

    Programme of(CaseFile file) {
        List<Prescription> all = prescriptions.of(file.id());
        Map<Long, List<AdherenceEntry>> reported = entries.ofCase(file.id());
        CaseSafety safety = safeties.of(file.id());
        WorkingDay day = workingDay(file);
        List<ProgrammeItem> items = all.stream().map(p -> item(p, safety, reported.getOrDefault(p.id(), List.of()), day)).toList();
        int saves = all.stream().mapToInt(p -> p.version() + 1).sum();
        return new Programme(items.stream().filter(i -> i.given().current()).toList(), items.stream().filter(i -> !i.given().current()).toList(),
                day, file.patient().hoursAWeek() != null, saves);
    }

    /** One exercise of a case, whether given now or ended. */
    ProgrammeItem item(CaseFile file, long prescriptionId) {
        Prescription given = prescriptions.inCase(file.id(), prescriptionId).orElseThrow(NotFoundException::new);
        return item(given, safeties.of(file.id()), entries.ofCase(file.id()).getOrDefault(prescriptionId, List.of()), workingDay(file));
    }

    /** Hours a week are spread over five days; without them the usual day counts. */
    static WorkingDay workingDay(CaseFile file) {
        BigDecimal hoursAWeek = file.patient().hoursAWeek();
        return hoursAWeek == null || hoursAWeek.signum() == 0 ? WorkingDay.USUAL
                : new WorkingDay(hoursAWeek.doubleValue() / WorkingDay.USUAL.days(), WorkingDay.USUAL.days());
    }

    private ProgrammeItem item(Prescription given, CaseSafety safety, List<AdherenceEntry> reported, WorkingDay day) {
        Exercise exercise = catalogue.find(given.exerciseKey())
                .orElseThrow(() -> new IllegalStateException("Exercise " + given.exerciseKey() + " is prescribed but no longer in the content"));
        return new ProgrammeItem(given, exercise, safety.of(exercise), reported, day, catalogue.stopRules().pain());
    }
}
