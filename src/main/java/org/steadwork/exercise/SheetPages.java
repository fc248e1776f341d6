package org.steadwork.exercise;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Answers;

/** The sheet for the patient, to print: figures, doses in words, stop rules. It names no red flag and no employer. */
@Path("/cases/{id: \\d+}/programme/sheet")
@RolesAllowed("clinician")
class SheetPages {

    @CheckedTemplate(basePath = "exercise", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance sheet(Sheet sheet);
    }

    /**
     * What stands on the sheet.
     *
     * @param pregnant true when the patient is known to be pregnant
     */
    record Sheet(CaseFile file, Programme programme, StopRules rules, boolean pregnant, LocalDate today, String clinician, String profession) {
    }

    @Inject
    CaseHeads heads;

    @Inject
    Programmes programmes;

    @Inject
    CaseSafeties safeties;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response sheet(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("printed the exercise sheet", file.patient().id(), id, null);
        CaseSafety safety = safeties.of(id);
        boolean pregnant = safety.answer("pregnant") == Answer.YES || safety.answer("pregnant_late") == Answer.YES;
        return Answers.page(Templates.sheet(new Sheet(file, programmes.of(file), catalogue.stopRules(), pregnant, LocalDate.now(clock),
                account.displayName(), account.get().profession())));
    }
}
