package org.steadwork.workplace;

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
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.drawing.desk.DeskView;
import org.steadwork.drawing.desk.PlanWindow;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** The desk of the latest assessment from above: screens, keys, pointer, papers, telephone, window and what one can reach. */
@Path("/cases/{id: \\d+}/work-place/plan")
@RolesAllowed("clinician")
class PlanPages {

    /**
     * What stands on the page.
     *
     * @param drawing null while nothing was read off
     */
    record View(Form form, List<PlanText> desk, List<PlanText> keys, List<PlanText> screens, List<PlanText> rest, List<Option> seconds,
            List<Option> windows, String drawing, String drawingForPhone) {
    }

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance plan(CaseHead head, View view);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    DeskPlans plans;

    @Inject
    PlanContent content;

    @Inject
    PlanDrawing drawing;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        RecordedWorkplace recorded = latest(id);
        Optional<DeskPlan> plan = plans.of(recorded.assessment());
        return Answers.page(page(head, recorded, plan, plan.map(PlanPages::shown).orElseGet(() -> begun(recorded))));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        RecordedWorkplace recorded = latest(id);
        Form form = posted.read();
        Optional<DeskPlan> stored = plans.of(recorded.assessment());
        SecondScreen second = form.requiredChoice("second", "Second screen", SecondScreen.class);
        PlanWindow.Where window = form.choice("window", "Where the window lies", PlanWindow.Where.class);
        Map<PlanItem, BigDecimal> readings = new EnumMap<>(PlanItem.class);
        content.all().forEach(text -> read(form, text, readings));
        pair(form, readings, PlanItem.POINTER_ASIDE, PlanItem.POINTER_EDGE);
        pair(form, readings, PlanItem.PAPERS_ASIDE, PlanItem.PAPERS_EDGE);
        pair(form, readings, PlanItem.PHONE_ASIDE, PlanItem.PHONE_EDGE);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), recorded, stored, form));
        }
        try {
            StaleVersionException.check(form.version(), counted(stored));
        } catch (StaleVersionException e) {
            return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), recorded, stored,
                    stored.map(plan -> form.conflictsWith(shown(plan), counted(stored))).orElse(form.with("version", 0))));
        }
        DeskPlan plan = stored.orElseGet(() -> new DeskPlan(recorded.assessment()));
        plan.shows(second, window, readings);
        plans.persist(plan);
        audit.record("recorded the desk from above", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/work-place/plan");
    }

    /** 0 while there is none, so that two people who begin at once are told apart. */
    private static int counted(Optional<DeskPlan> plan) {
        return plan.map(stored -> stored.version() + 1).orElse(0);
    }

    private static void read(Form form, PlanText text, Map<PlanItem, BigDecimal> readings) {
        BigDecimal value = form.decimal(text.key(), text.label(), BigDecimal.valueOf(text.range().low()), BigDecimal.valueOf(text.range().high()), 1, text.unit());
        if (value != null) {
            readings.put(text.item(), value);
        } else if (text.needed() && form.error(text.key()) == null) {
            form.error(text.key(), text.label() + " is needed: without it nothing can be drawn.");
        }
    }

    /** A place has two numbers; with one of them it could not be drawn. */
    private void pair(Form form, Map<PlanItem, BigDecimal> readings, PlanItem one, PlanItem other) {
        if (readings.containsKey(one) != readings.containsKey(other)) {
            PlanItem missing = readings.containsKey(one) ? other : one;
            if (form.error(missing.key()) == null) {
                form.error(missing.key(), content.of(missing).label() + " is needed as well, or leave both empty.");
            }
        }
    }

    private static Form shown(DeskPlan plan) {
        Form form = Form.empty().with("version", counted(Optional.of(plan))).with("second", plan.second().name().toLowerCase(Locale.ROOT));
        if (plan.window() != null) {
            form.with("window", plan.window().name().toLowerCase(Locale.ROOT));
        }
        plan.readings().forEach((item, amount) -> form.with(item.key(), amount.stripTrailingZeros().toPlainString()));
        return form;
    }

    /** What the assessment knows already is not asked again. */
    private static Form begun(RecordedWorkplace recorded) {
        Form form = Form.empty().with("version", 0).with("second", "none");
        carry(form, recorded, "KB-3", PlanItem.KEYS_EDGE);
        carry(form, recorded, "KB-7", PlanItem.KEYS_ASIDE);
        carry(form, recorded, "DK-4", PlanItem.DESK_DEPTH);
        carry(form, recorded, "LI-4", PlanItem.WINDOW_OFF);
        carry(form, recorded, StationMeasure.DISTANCE_NOW.key(), PlanItem.MAIN_DISTANCE);
        return form;
    }

    private static void carry(Form form, RecordedWorkplace recorded, String key, PlanItem item) {
        if (recorded.taken().containsKey(key)) {
            form.with(item.key(), recorded.taken().get(key).amount().stripTrailingZeros().toPlainString());
        }
    }

    private RecordedWorkplace latest(long id) {
        return assessments.latest(id).map(assessments::recorded).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(CaseHead head, RecordedWorkplace recorded, Optional<DeskPlan> plan, Form form) {
        return Templates.plan(head, new View(form, content.group("desk"), content.group("keys"), content.group("screen"), content.group("rest"),
                Arrays.stream(SecondScreen.values()).map(s -> new Option(s.name().toLowerCase(Locale.ROOT), WorkplaceWords.capital(s.label()))).toList(),
                List.of(new Option("left", "Left"), new Option("right", "Right"), new Option("ahead", "Ahead, behind the screen"), new Option("behind", "Behind the person")),
                plan.map(p -> drawing.draw(recorded, p, DeskView.PAGE)).orElse(null), plan.map(p -> drawing.draw(recorded, p, DeskView.PHONE)).orElse(null)));
    }
}
