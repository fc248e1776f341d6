package org.steadwork.oversight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;

/** Who else reads a patient's record: everybody who does knows that the others see it. */
@Path("/patients/{id: \\d+}/readers")
@RolesAllowed("clinician")
class PatientReadersPages {

    @CheckedTemplate(basePath = "oversight", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance readers(Patient patient, List<AuditTrail.Reader> readers);
    }

    private static final int MOST = 200;

    @Inject
    Patients patients;

    @Inject
    AuditTrail audit;

    @GET
    public Response readers(@RestPath long id) {
        Patient patient = patients.withAll(id).orElseThrow(NotFoundException::new);
        audit.record("viewed who read the record", id, null, null);
        return Answers.page(Templates.readers(patient, audit.readers(id, MOST)));
    }
}
