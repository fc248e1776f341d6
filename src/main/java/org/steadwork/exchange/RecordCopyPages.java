package org.steadwork.exchange;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;

/** The copy of a patient's whole record, for the patient to take along. */
@Path("/patients/{id: \\d+}/record-copy")
@RolesAllowed("clinician")
class RecordCopyPages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance recordCopy(Patient patient, List<CaseFile> cases);
    }

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    RecordCopies copies;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @GET
    public Response show(@RestPath long id) {
        Patient patient = find(id);
        audit.record("viewed the copy of the record", id, null, null);
        return Answers.page(Templates.recordCopy(patient, cases.ofPatient(id)));
    }

    @GET
    @Path("/copy.zip")
    @Transactional
    public Response copy(@RestPath long id) throws IOException {
        Patient patient = find(id);
        if (cases.ofPatient(id).isEmpty()) {
            throw new NotFoundException();
        }
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        copies.write(id, account.get(), zip);
        audit.record("handed out the copy of the record", id, null, "for the patient");
        return Response.ok(zip.toByteArray(), "application/zip").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"record-" + patient.fileNumber() + ".zip\"").build();
    }

    private Patient find(long id) {
        return patients.withAll(id).orElseThrow(NotFoundException::new);
    }
}
