package org.steadwork.people;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Changing who a patient is and where they work; the assistant may do it. */
@Path("/patients/{id: \\d+}/edit")
@RolesAllowed("staff")
class PatientEditPages {

    @Inject
    Patients patients;

    @Inject
    Directory directory;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response edit(@RestPath long id) {
        Patient patient = find(id);
        audit.record("viewed identity", id, null, null);
        return Answers.page(PatientPages.Templates.patientEdit(patient, PatientForm.show(patient), PatientLists.of(directory), List.of()));
    }

    @POST
    @Transactional
    public Response editPosted(@RestPath long id) {
        Patient patient = find(id);
        Form form = posted.read();
        PatientForm typed = PatientForm.read(form, patient.registeredOn());
        if (form.hasErrors()) {
            return Answers.unprocessable(PatientPages.Templates.patientEdit(patient, form, PatientLists.of(directory), List.of()));
        }
        try {
            patient.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.conflictsWith(PatientForm.show(patient), stale.stored());
            return Answers.conflict(PatientPages.Templates.patientEdit(patient, form, PatientLists.of(directory), List.of()));
        }
        List<PatientRow> doubles = patients.likelyDoubles(typed.givenName(), typed.familyName(), typed.birthDate(), id);
        if (!doubles.isEmpty() && !form.ticked("anotherPerson")) {
            return Answers.unprocessable(PatientPages.Templates.patientEdit(patient, form, PatientLists.of(directory), doubles));
        }
        patient.identify(typed.givenName(), typed.familyName(), typed.birthDate());
        typed.fill(patient, directory);
        audit.record("changed identity", id, null, null);
        return Answers.seeOther("/patients/" + id);
    }

    private Patient find(long id) {
        return patients.withAll(id).orElseThrow(NotFoundException::new);
    }
}
