package org.steadwork.casefile;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One patient with their cases, and opening a case. */
@Path("/patients/{id: \\d+}")
class PatientCasePages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance patient(Patient patient, int age, List<CaseFile> cases, Set<Long> open, List<AuditTrail.Reader> readers);

        static native TemplateInstance caseEdit(Patient patient, CaseFile file, Form form);
    }

    private static final int READERS_SHOWN = 5;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    Visits visits;

    @Inject
    CaseAccess access;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Event<CaseOpened> opened;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** The assistant sees who the patient is and that cases exist; what the complaint is, only clinicians see. */
    @GET
    @RolesAllowed("staff")
    public Response patient(@RestPath long id) {
        Patient patient = find(id);
        audit.record("viewed patient", id, null, null);
        List<CaseFile> all = cases.ofPatient(id);
        return Answers.page(Templates.patient(patient, patient.ageOn(LocalDate.now(clock)), all, access.openOf(all.stream().map(CaseFile::id).toList()),
                account.clinician() ? audit.readers(id, READERS_SHOWN) : List.of()));
    }

    @GET
    @Path("/cases/new")
    @RolesAllowed("clinician")
    public Response open(@RestPath long id) {
        return Answers.page(Templates.caseEdit(find(id), null,
                Form.empty().with("openedOn", Dates.shown(LocalDate.now(clock)))));
    }

    @POST
    @Path("/cases/new")
    @Transactional
    @RolesAllowed("clinician")
    public Response openPosted(@RestPath long id) {
        Patient patient = find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        CaseForm typed = CaseForm.read(form, patient, null, today);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.caseEdit(patient, null, form));
        }
        CaseFile file = new CaseFile(patient, account.get(), typed.complaint(), typed.onsetOn(), typed.openedOn());
        file.describe(typed.complaint(), typed.onsetOn(), typed.referredBy(), typed.history());
        file.referredOn(typed.referredOn());
        file.reviewOn(typed.nextReviewOn());
        cases.persistAndFlush(file);
        opened.fire(new CaseOpened(file, visits.add(file, typed.openedOn(), VisitKind.INITIAL, Attendance.ATTENDED)));
        audit.record("opened case", id, file.id(), null);
        return Answers.seeOther(CaseTab.SYMPTOMS.href(file.id()));
    }

    private Patient find(long id) {
        return patients.withAll(id).orElseThrow(NotFoundException::new);
    }
}
