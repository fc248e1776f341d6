package org.steadwork.exchange;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.hl7.fhir.r4.model.Bundle;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.exchange.fhir.CaseBundles;
import org.steadwork.exchange.fhir.CaseRecords;
import org.steadwork.exchange.fhir.FhirFormat;
import org.steadwork.web.ApiProblem;

/** A case as a FHIR R4 bundle for a program of somebody signed in as a clinician; the same rules of disclosure as on the page. */
@Path("/api/cases/{id: \\d+}/fhir")
@RolesAllowed("clinician")
class CaseFhirApi {

    @Inject
    CaseFiles cases;

    @Inject
    CaseReaders readers;

    @Inject
    CaseRecords records;

    @Inject
    CaseBundles bundles;

    @Inject
    FhirFormat format;

    @Inject
    AuditTrail audit;

    @GET
    @Produces({FhirFormat.JSON_TYPE, "application/json", "*/*"})
    @Transactional
    public Response bundle(@RestPath long id, @RestQuery("for") String reader) {
        Optional<CaseFile> found = cases.withPeople(id);
        Optional<CaseReaders.Asked> asked = found.flatMap(file -> readers.find(file, reader));
        if (asked.isEmpty()) {
            return ApiProblem.of(404, "Not found", found.isEmpty() ? "There is no such case." : "No consent of this case is for that reader.").answer();
        }
        if (asked.get().shut() != null) {
            return ApiProblem.of(403, "No consent in force", "The consent to write to this reader is " + asked.get().shut() + ".").answer();
        }
        CaseFile file = found.get();
        Bundle bundle = bundles.of(records.of(file), asked.get().portion());
        audit.record("handed out the case as FHIR", file.patient().id(), id, "to a program, for " + asked.get().portion().name());
        return Response.ok(format.json(bundle), FhirFormat.JSON_TYPE + ";charset=utf-8").header("Cache-Control", "no-store").build();
    }
}
