package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Form;

/** Gives an exercise as typed, after everything that stands against it was checked. */
@ApplicationScoped
class Giving {

    @Inject
    Prescriptions prescriptions;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    /** Reads a dose and notes at its fields what is wrong, what bars the exercise, and what was not considered. */
    DoseForm read(Form form, CaseFile file, Exercise exercise, CaseSafety.Verdict verdict, Set<String> given) {
        DoseForm typed = DoseForm.read(form, exercise, file.openedOn(), LocalDate.now(clock));
        Cautions.check(form, verdict);
        if (!file.open()) {
            form.error("startedOn", "This case is closed. Open it again before giving an exercise.");
        }
        if (given.contains(exercise.key())) {
            form.error("startedOn", "This exercise is given already. Change its dose instead.");
        }
        return typed;
    }

    void give(CaseFile file, Exercise exercise, DoseForm typed, CaseSafety.Verdict verdict) {
        Prescription prescription = new Prescription(file, exercise, typed.startedOn(), account.displayName(), Instant.now(clock));
        typed.fill(prescription);
        prescription.consider(verdict.toConsider().stream().map(CaseSafety.Caution::key).collect(Collectors.toSet()));
        prescriptions.persist(prescription);
        audit.record("gave an exercise", file.patient().id(), file.id(), null);
    }
}
