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
    RegisteredPlaces places;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /**
     * Shows the latest assessment in the form; with {@code again} a new one that starts from the latest. With a registered desk or chair
     * it starts from what the register knows of it, and only the person's measures are taken over.
     */
    @GET
    public Response edit(@RestPath long id, @RestQuery boolean again, @RestQuery Long desk, @RestQuery Long chair) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        Optional<RecordedWorkplace> latest = assessments.latest(id).map(assessments::recorded);
        Form form = latest.map(recorded -> AssessmentForm.show(recorded, content)).orElseGet(() -> AssessmentForm.fresh(today(), content));
        if (again) {
            form.with("assessment", "").with("version", "").with("assessedOn", Dates.shown(today()));
        }
        if (desk != null || chair != null) {
            startFrom(form, desk, chair);
            places.of(head.file(), form).fill(form);
        }
        return Answers.page(page(head, form));
    }

    private void startFrom(Form form, Long desk, Long chair) {
        form.with("assessment", "").with("version", "").with("assessedOn", Dates.shown(today())).with("place", "");
        for (StationMeasure measure : StationMeasure.values()) {
            form.with(measure.key(), "");
        }
        content.criteria().forEach(criterion -> form.with(criterion.id(), CriterionFields.typed(criterion) ? "" : "not_asked"));
        form.with("desk", desk == null ? "" : desk).with("chair", chair == null ? "" : chair);
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        if (form.is("do", "estimate")) {
            return Answers.page(page(heads.head(file, CaseTab.WORK_PLACE), estimateTheRest(form)));
        }
        RegisteredPlace place = places.of(file, form);
        if (form.is("do", "fill")) {
            if (!form.has("desk") && !form.has("chair")) {
                form.error("desk", "Choose the desk or the chair first; then its sizes are filled in.");
                return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), form));
            }
            place.fill(form);
            return Answers.page(page(heads.head(file, CaseTab.WORK_PLACE), form));
        }
        List<WorkplaceAssessment> looks = assessments.of(id);
        WorkplaceAssessment changed = form.has("assessment") ? looks.stream().filter(look -> String.valueOf(look.id()).equals(form.value("assessment"))).findFirst()
                .orElseThrow(NotFoundException::new) : null;
        RecordedWorkplace before = changed != null ? assessments.recorded(changed) : looks.stream().findFirst().map(assessments::recorded).orElse(null);
        AssessmentForm typed = AssessmentForm.read(form, content, file, today(), ToldSizes.of(place, before));
        Furniture desk = place.chosen(form, FurnitureKind.DESK);
        Furniture chair = place.chosen(form, FurnitureKind.CHAIR);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), form));
        }
        if (changed != null) {
            try {
                changed.requireVersion(form.version());
            } catch (StaleVersionException stale) {
                return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), form.conflictsWith(AssessmentForm.show(before, content), stale.stored())));
            }
        }
        WorkplaceAssessment assessment = changed != null ? changed : new WorkplaceAssessment(file, typed.assessedOn());
        typed.putInto(assessment);
        assessment.standsAt(desk, chair);
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
                new BodyForm(content, head.file().patient().sex()), places.of(head.file(), form)));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
