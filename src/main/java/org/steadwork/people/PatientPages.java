package org.steadwork.people;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Finding and registering patients; the assistant may do both. */
@Path("/patients")
@RolesAllowed("staff")
class PatientPages {

    @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance patients(String q, List<PatientRow> found, List<PatientRow> latest);

        static native TemplateInstance patients$hits(String q, List<PatientRow> found);

        static native TemplateInstance patientEdit(Patient patient, Form form, PatientLists lists, List<PatientRow> doubles);
    }

    private static final int MOST_HITS = 12;

    @Inject
    Patients patients;

    @Inject
    Directory directory;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response find(@RestQuery String q, @HeaderParam("HX-Request") String htmx) {
        List<PatientRow> found = patients.search(q, MOST_HITS);
        String typed = q == null ? "" : q;
        if (htmx != null) {
            return Response.fromResponse(Answers.page(Templates.patients$hits(typed, found))).header("Vary", "HX-Request").build();
        }
        return Answers.page(Templates.patients(typed, found, typed.isBlank() ? patients.latest(10) : List.of()));
    }

    @GET
    @Path("/new")
    public Response register() {
        return Answers.page(Templates.patientEdit(null, Form.empty(), PatientLists.of(directory), List.of()));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response registerPosted() {
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        PatientForm typed = PatientForm.read(form, today);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.patientEdit(null, form, PatientLists.of(directory), List.of()));
        }
        List<PatientRow> doubles = patients.likelyDoubles(typed.givenName(), typed.familyName(), typed.birthDate(), null);
        if (!doubles.isEmpty() && !form.ticked("anotherPerson")) {
            return Answers.unprocessable(Templates.patientEdit(null, form, PatientLists.of(directory), doubles));
        }
        Patient patient = new Patient(patients.nextFileNumber(), typed.givenName(), typed.familyName(), typed.birthDate(), today);
        typed.fill(patient, directory);
        patients.persistAndFlush(patient);
        audit.record("registered patient", patient.id(), null, patient.fileNumber());
        return Answers.seeOther("/patients/" + patient.id());
    }
}
