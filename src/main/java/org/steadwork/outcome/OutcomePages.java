package org.steadwork.outcome;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Whether it is getting better: the measures of a case, and today's single ratings. */
@Path("/cases/{id: \\d+}/outcomes")
@RolesAllowed("clinician")
class OutcomePages {

    @CheckedTemplate(basePath = "outcome", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance outcomes(CaseHead head, OutcomeView view);

        static native TemplateInstance scoreEntry(CaseHead head, ScoreEntry entry);
    }

    @Inject
    CaseHeads heads;

    @Inject
    OutcomeViews views;

    @Inject
    RatingForm ratings;

    @Inject
    ScoreGrids grids;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response outcomes(@RestPath long id, @RestQuery String on) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        LocalDate today = LocalDate.now(clock);
        return Answers.page(Templates.outcomes(head, views.of(head.file(), ScoreDay.of(on, head.file(), today), today, null)));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        LocalDate on = ScoreDay.read(form, file, today);
        RatingForm.Ratings typed = ratings.read(form, id);
        boolean fromDue = form.is("from", "due");
        if (form.hasErrors()) {
            CaseHead head = heads.head(file, CaseTab.OUTCOMES);
            OutcomeView view = views.of(file, on == null ? today : on, today, form);
            return Answers.unprocessable(fromDue ? DuePages.Templates.due(head, view) : Templates.outcomes(head, view));
        }
        int stored = grids.version(id, on);
        if (stored != form.version()) {
            OutcomeView now = views.of(file, on, today, null);
            form.conflictsWith(views.show(now.grid()), stored);
            return Answers.conflict(Templates.outcomes(heads.head(file, CaseTab.OUTCOMES), views.of(file, on, today, form)));
        }
        ratings.store(file, on, typed);
        audit.record("entered scores", file.patient().id(), id, null);
        return Answers.seeOther((fromDue ? "/cases/" + id + "/due" : CaseTab.OUTCOMES.href(id)) + "?on=" + on);
    }
}
