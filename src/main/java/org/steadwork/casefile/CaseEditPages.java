package org.steadwork.casefile;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Describing a case anew: complaint, history, next review. */
@Path("/cases/{id: \\d+}/edit")
@RolesAllowed("clinician")
class CaseEditPages {

    @Inject
    CaseHeads heads;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response describe(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("viewed case details", file.patient().id(), id, null);
        return Answers.page(PatientCasePages.Templates.caseEdit(file.patient(), file, CaseForm.show(file)));
    }

    @POST
    @Transactional
    public Response describePosted(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        CaseForm typed = CaseForm.read(form, file.patient(), file.openedOn(), LocalDate.now(clock));
        if (form.hasErrors()) {
            return Answers.unprocessable(PatientCasePages.Templates.caseEdit(file.patient(), file, form));
        }
        try {
            file.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(PatientCasePages.Templates.caseEdit(file.patient(), file, form.conflictsWith(CaseForm.show(file), stale.stored())));
        }
        file.describe(typed.complaint(), typed.onsetOn(), typed.referredBy(), typed.history());
        file.referredOn(typed.referredOn());
        file.reviewOn(typed.nextReviewOn());
        audit.record("changed case details", file.patient().id(), id, null);
        return Answers.seeOther("/patients/" + file.patient().id());
    }
}
