package org.steadwork.exercise;

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
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** The day plan: breaks and desk exercises laid on the patient's working day. */
@Path("/cases/{id: \\d+}/programme/day-plan")
@RolesAllowed("clinician")
class DayPlanPages {

    @CheckedTemplate(basePath = "exercise", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance dayPlan(CaseHead head, DayPlanView view, Programme programme, Form form, Choices choices);
    }

    /** What the form offers. */
    record Choices(List<Option> days, List<Option> kinds, List<Row> rows) {

        static final Choices ALL = new Choices(Option.of(DayOfWeek.class, day -> day.getDisplayName(TextStyle.SHORT, Locale.UK)),
                Option.of(FixedBlock.Kind.class, FixedBlock.Kind::label), IntStream.rangeClosed(1, DayPlanForm.ROWS).mapToObj(Row::new).toList());
    }

    /** The fields of one fixed time. */
    record Row(int number) {

        public String from() {
            return "from" + number;
        }

        public String to() {
            return "to" + number;
        }

        public String kind() {
            return "kind" + number;
        }

        public String what() {
            return "what" + number;
        }
    }

    /** A day from nine to five with lunch: a beginning, to be made the patient's own. */
    private static final List<String> USUAL_DAYS = List.of("monday", "tuesday", "wednesday", "thursday", "friday");

    @Inject
    CaseHeads heads;

    @Inject
    DayPlans plans;

    @Inject
    PlannedDays planned;

    @Inject
    Programmes programmes;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response dayPlan(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        DayPlan plan = plans.ofCase(id).orElse(null);
        Programme programme = programmes.of(head.file());
        return Answers.page(Templates.dayPlan(head, plan == null ? null : planned.of(plan, programme), programme, plan == null ? usual() : DayPlanForm.show(plan), Choices.ALL));
    }

    @POST
    @Transactional
    public Response lay(@RestPath long id) {
        CaseFile file = heads.find(id);
        DayPlan plan = plans.ofCase(id).orElse(null);
        Form form = posted.read();
        DayPlanForm typed = DayPlanForm.read(form);
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, plan, form));
        }
        try {
            if (plan == null) {
                StaleVersionException.check(form.version(), -1);
                plan = new DayPlan(file);
            } else {
                plan.requireVersion(form.version());
            }
        } catch (StaleVersionException stale) {
            Form now = plan == null ? usual() : DayPlanForm.show(plan);
            return Answers.conflict(again(file, plan, form.conflictsWith(now, stale.stored())));
        }
        plan.lay(typed.frame(), typed.days(), typed.morningAt(), typed.eveningAt(), typed.discreet(), account.displayName(), Instant.now(clock));
        plans.persist(plan);
        audit.record("laid the day plan", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme/day-plan");
    }

    private TemplateInstance again(CaseFile file, DayPlan plan, Form form) {
        Programme programme = programmes.of(file);
        return Templates.dayPlan(heads.head(file, CaseTab.PROGRAMME), plan == null ? null : planned.of(plan, programme), programme, form, Choices.ALL);
    }

    private static Form usual() {
        return Form.empty().with("version", "").with("from", "09:00").with("to", "17:00").withAll("days", USUAL_DAYS).with("spell", 60).with("pause", 5)
                .with("from1", "12:30").with("to1", "13:00").with("kind1", "rest").with("what1", "Lunch").with("discreet", "yes");
    }
}
