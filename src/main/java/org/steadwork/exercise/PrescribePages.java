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
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
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
    Giving giving;

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
        CaseSafety.Verdict verdict = safeties.of(id).of(exercise);
        DoseForm typed = giving.read(form, file, exercise, verdict, prescriptions.given(id));
        if (form.hasErrors()) {
            return Answers.unprocessable(ProgrammePages.Templates.prescribe(heads.head(file, CaseTab.PROGRAMME), offer(file, exercise, false), form, DoseForm.SIDES));
        }
        giving.give(file, exercise, typed, verdict);
        return Answers.seeOther("/cases/" + id + "/programme");
    }

    private Exercise exercise(String key) {
        return catalogue.find(key).orElseThrow(NotFoundException::new);
    }

    private Offer offer(CaseFile file, Exercise exercise, boolean usesHeld) {
        return new Offer(exercise, safeties.of(file.id()).of(exercise), catalogue.heldStretch(exercise).orElse(null), usesHeld, Programmes.workingDay(file));
    }
}
