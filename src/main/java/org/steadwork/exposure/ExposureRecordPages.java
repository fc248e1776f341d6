package org.steadwork.exposure;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.bench.AnswerDocument;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One kept result as it was shown then, and its withdrawal. */
@Path("/cases/{id: \\d+}/exposure/{exposure: \\d+}")
@RolesAllowed("clinician")
class ExposureRecordPages {

    @CheckedTemplate(basePath = "exposure", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance exposureRecord(CaseHead head, ExposureView.Kept view);
    }

    private static final int LONGEST_REASON = 300;

    @Inject
    CaseHeads heads;

    @Inject
    ExposureRecords records;

    @Inject
    ExposureMethods methods;

    @Inject
    CurrentAccount who;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestPath long exposure) {
        ExposureRecord record = find(id, exposure);
        return Answers.page(page(heads.open(id, CaseTab.WORK_PLACE), record, Form.empty().with("version", record.version())));
    }

    @POST
    @Path("/withdraw")
    @Transactional
    public Response withdraw(@RestPath long id, @RestPath long exposure) {
        CaseFile file = heads.find(id);
        ExposureRecord record = find(id, exposure);
        Form form = posted.read();
        String reason = form.requiredText("reason", "Reason", LONGEST_REASON);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), record, form));
        }
        try {
            record.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), record, form.conflictsWith(Form.empty(), stale.stored())));
        }
        if (!record.standing()) {
            form.error("reason", "This result was corrected or withdrawn already; the first reason stands.");
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), record, form));
        }
        record.withdraw(who.displayName(), clock.instant(), reason);
        audit.record("withdrew exposure", file.patient().id(), id, record.method());
        return Answers.seeOther("/cases/" + id + "/exposure");
    }

    private ExposureRecord find(long caseId, long exposure) {
        return records.find(caseId, exposure).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(CaseHead head, ExposureRecord record, Form form) {
        Map<String, Object> document = methods.read(record.answer());
        return Templates.exposureRecord(head, new ExposureView.Kept(record, entered(record), AnswerDocument.read(document), AnswerDocument.texts(document, "limits"),
                (String) document.get("standing"), AnswerDocument.texts(document, "sources"), record.corrected() ? records.correcting(record).orElse(null) : null, form));
    }

    private List<ExposureView.Entered> entered(ExposureRecord record) {
        return methods.named(record.method()).map(method -> ExposureView.Entered.of(method.inputs(), methods.read(record.entries()))).orElse(List.of());
    }
}
