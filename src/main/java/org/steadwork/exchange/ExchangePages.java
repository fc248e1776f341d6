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
import java.util.List;
import org.hl7.fhir.r4.model.Bundle;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exchange.fhir.CaseBundles;
import org.steadwork.exchange.fhir.CaseRecords;
import org.steadwork.exchange.fhir.FhirFormat;
import org.steadwork.web.Answers;

/** Handing a case to another program: for whom, what would go, and the files. */
@Path("/cases/{id: \\d+}/exchange")
@RolesAllowed("clinician")
class ExchangePages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseExchange(CaseHead head, List<CaseReaders.Row> readers, String refused);
    }

    @Inject
    CaseHeads heads;

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
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        return Answers.page(Templates.caseExchange(head, readers.rows(head.file()), null));
    }

    @GET
    @Path("/bundle.json")
    @Transactional
    public Response bundle(@RestPath long id, @RestQuery("for") String reader) {
        CaseFile file = heads.find(id);
        CaseReaders.Asked asked = readers.find(file, reader).orElseThrow(NotFoundException::new);
        if (asked.shut() != null) {
            return Response.fromResponse(Answers.page(Templates.caseExchange(heads.head(file, CaseTab.LETTERS), readers.rows(file),
                    "Nothing was handed out: the consent to write to " + asked.portion().name() + " is " + asked.shut() + "."))).status(403).build();
        }
        Bundle bundle = bundles.of(records.of(file), asked.portion());
        audit.record("handed out the case as FHIR", file.patient().id(), id, "for " + asked.portion().name());
        return Response.ok(format.json(bundle), FhirFormat.JSON_TYPE + ";charset=utf-8").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"" + file.patient().fileNumber() + "-case-" + id + ".fhir.json\"").build();
    }
}
