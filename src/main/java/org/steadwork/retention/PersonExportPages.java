package org.steadwork.retention;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;

/** Hands out everything about one person, for the person or for another clinic. */
@Path("/patients/{id: \\d+}/export")
@RolesAllowed("clinician")
class PersonExportPages {

    @CheckedTemplate(basePath = "retention", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance personExport(Patient patient, Map<String, Integer> tables, int rows);
    }

    @Inject
    Patients patients;

    @Inject
    Retentions retentions;

    @Inject
    PersonExport export;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @GET
    public Response page(@RestPath long id) {
        Patient patient = find(id);
        Map<String, Integer> tables = retentions.counts(id);
        audit.record("viewed export", id, null, null);
        return Answers.page(Templates.personExport(patient, tables, tables.values().stream().mapToInt(Integer::intValue).sum()));
    }

    @GET
    @Path("person.zip")
    public Response zip(@RestPath long id) {
        Patient patient = find(id);
        byte[] file = export.of(patient, account.get());
        audit.record("exported everything about a person", id, null, file.length + " bytes");
        return Response.ok(file, "application/zip").header("Content-Disposition", "attachment; filename=\"" + patient.fileNumber().replaceAll("[^A-Za-z0-9-]", "-")
                + ".zip\"").header("Cache-Control", "no-store").build();
    }

    private Patient find(long id) {
        return patients.withAll(id).orElseThrow(NotFoundException::new);
    }
}
