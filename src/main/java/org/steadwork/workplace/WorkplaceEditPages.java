package org.steadwork.workplace;

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
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyMeasure;

/** Entering what was measured and seen at the work place of a case. */
@Path("/cases/{id: \\d+}/work-place/edit")
@RolesAllowed("clinician")
class WorkplaceEditPages {

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** Shows the latest assessment in the form; with {@code again} a new one that starts from the latest. */
    @GET
    public Response edit(@RestPath long id, @RestQuery boolean again) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        Optional<RecordedWorkplace> latest = assessments.latest(id).map(assessments::recorded);
        Form form = latest.map(recorded -> AssessmentForm.show(recorded, content)).orElseGet(() -> AssessmentForm.fresh(today(), content));
        if (again) {
            form.with("assessment", "").with("version", "").with("assessedOn", Dates.shown(today()));
        }
        return Answers.page(page(head, form));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        if (form.is("do", "estimate")) {
            return Answers.page(page(heads.head(file, CaseTab.WORK_PLACE), estimateTheRest(form)));
        }
        AssessmentForm typed = AssessmentForm.read(form, content, file, today());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), form));
        }
        List<WorkplaceAssessment> looks = assessments.of(id);
        WorkplaceAssessment assessment;
        if (form.has("assessment")) {
            assessment = looks.stream().filter(look -> String.valueOf(look.id()).equals(form.value("assessment"))).findFirst()
                    .orElseThrow(NotFoundException::new);
            try {
                assessment.requireVersion(form.version());
            } catch (StaleVersionException stale) {
                Form stored = AssessmentForm.show(assessments.recorded(assessment), content);
                return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), form.conflictsWith(stored, stale.stored())));
            }
        } else {
            assessment = new WorkplaceAssessment(file, typed.assessedOn());
        }
        typed.putInto(assessment);
        assessments.record(assessment, typed.taken(), typed.grades());
        audit.record("assessed work place", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/work-place");
    }

    /** Ticks "estimate" at every measure of the fit that was left empty; nothing is stored. */
    private Form estimateTheRest(Form form) {
        if (!form.has("stature")) {
            form.error("stature", "Enter the stature first; the other measures are estimated from it.");
            return form;
        }
        for (BodyDimension dimension : BodyDimension.values()) {
            dimension.measure().filter(WorkplaceEditPages::neededForTheFit).map(FitContent::key).filter(key -> !form.has(key))
                    .ifPresent(key -> form.with(key + BodyForm.ESTIMATE, "yes"));
        }
        return form;
    }

    private static boolean neededForTheFit(BodyMeasure measure) {
        return measure != BodyMeasure.HIP_BREADTH_SITTING && measure != BodyMeasure.ABDOMINAL_DEPTH_SITTING;
    }

    private TemplateInstance page(CaseHead head, Form form) {
        String title = form.has("assessment") ? "Change the measures" : "Assess the work place";
        return WorkplacePages.Templates.workPlaceEdit(head, WorkplaceFields.of(form, "/cases/" + head.id() + "/work-place/edit", title, content,
                new BodyForm(content, head.file().patient().sex())));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
