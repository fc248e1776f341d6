package org.steadwork.exercise;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Giving an exercise: its dose, with everything that stands against it shown before it is saved. */
@Path("/cases/{id: \\d+}/programme/add/{key: [a-z0-9_]+}")
@RolesAllowed("clinician")
class PrescribePages {

    @Inject
    CaseHeads heads;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CaseSafeties safeties;

    @Inject
    Prescriptions prescriptions;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** @param dose {@code held} for the slow desk dose with longer holds */
    @GET
    public Response offer(@RestPath long id, @RestPath String key, @RestQuery String dose) {
        Exercise exercise = exercise(key);
        Dose held = catalogue.heldStretch(exercise).orElse(null);
        boolean usesHeld = held != null && "held".equals(dose);
        var head = heads.open(id, CaseTab.PROGRAMME);
        return Answers.page(ProgrammePages.Templates.prescribe(head, offer(head.file(), exercise, usesHeld),
                DoseForm.proposal(exercise, usesHeld ? held : exercise.dose(), LocalDate.now(clock)), DoseForm.SIDES));
    }

    @POST
    @Transactional
    public Response give(@RestPath long id, @RestPath String key) {
        CaseFile file = heads.find(id);
        Exercise exercise = exercise(key);
        Form form = posted.read();
        DoseForm typed = DoseForm.read(form, exercise, file.openedOn(), LocalDate.now(clock));
        CaseSafety.Verdict verdict = safeties.of(id).of(exercise);
        Cautions.check(form, verdict);
        if (!file.open()) {
            form.error("startedOn", "This case is closed. Open it again before giving an exercise.");
        }
        if (prescriptions.of(id).stream().anyMatch(p -> p.current() && p.exerciseKey().equals(key))) {
            form.error("startedOn", "This exercise is given already. Change its dose instead.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(ProgrammePages.Templates.prescribe(heads.head(file, CaseTab.PROGRAMME), offer(file, exercise, false), form, DoseForm.SIDES));
        }
        Prescription prescription = new Prescription(file, exercise, typed.startedOn(), account.displayName(), Instant.now(clock));
        typed.fill(prescription);
        prescription.consider(verdict.toConsider().stream().map(CaseSafety.Caution::key).collect(Collectors.toSet()));
        prescriptions.persist(prescription);
        audit.record("gave an exercise", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme");
    }

    private Exercise exercise(String key) {
        return catalogue.find(key).orElseThrow(NotFoundException::new);
    }

    private Offer offer(CaseFile file, Exercise exercise, boolean usesHeld) {
        return new Offer(exercise, safeties.of(file.id()).of(exercise), catalogue.heldStretch(exercise).orElse(null), usesHeld, Programmes.workingDay(file));
    }
}
