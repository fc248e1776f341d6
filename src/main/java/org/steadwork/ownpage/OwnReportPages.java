package org.steadwork.ownpage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The report before a visit: pain, own activities, questionnaires that are due, warning signs. It waits for a clinician and says plainly what to do until then. */
@Path("/own/report")
@PermitAll
class OwnReportPages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance ownReport(OwnReportView own);

        static native TemplateInstance ownReported(OwnReport report);
    }

    @Inject
    OwnGuest guest;

    @Inject
    OwnLinks links;

    @Inject
    OwnReports reports;

    @Inject
    OwnReportViews views;

    @Inject
    OwnReportReading reading;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response report() {
        Optional<OwnLink> link = guest.link();
        return link.isEmpty() ? Answers.seeOther("/own") : Answers.page(Templates.ownReport(views.of(link.get().caseFile(), Form.empty())));
    }

    /** What was just reported, and what to do now. */
    @GET
    @Path("/thanks")
    public Response reported() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        Optional<OwnReport> latest = reports.ofCase(link.get().caseFile().id()).stream().findFirst();
        return latest.isEmpty() ? Answers.seeOther("/own/report") : Answers.page(Templates.ownReported(latest.get()));
    }

    /** Takes a report once, however often it arrives. */
    @POST
    @Transactional
    public Response send() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        CaseFile file = link.get().caseFile();
        links.hold(file);
        Form form = posted.read();
        OwnReportView view = views.of(file, form);
        OwnReport report = reading.read(view, form);
        if (report == null) {
            return Answers.unprocessable(Templates.ownReport(view));
        }
        if (!OwnReportReading.sentTwice(report, reports.ofCase(file.id()))) {
            reports.persist(report);
            audit.record("reported before a visit", file.patient().id(), file.id(), "the patient, through the private link");
        }
        return Answers.seeOther("/own/report/thanks");
    }
}
