package org.steadwork.exercise;

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
import java.util.List;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.PainRule;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** One exercise of a programme: how it is kept, what to do next, its dose, its end. */
@Path("/cases/{id: \\d+}/programme/{prescription: \\d+}")
@RolesAllowed("clinician")
class PrescriptionPages {

    private static final List<Option> MORNINGS = Option.of(PainRule.Morning.class, PainRule.Morning::label);
    private static final int MOST_SESSIONS = 400;

    @Inject
    CaseHeads heads;

    @Inject
    Programmes programmes;

    @Inject
    AdherenceEntries entries;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestPath long prescription) {
        var head = heads.open(id, CaseTab.PROGRAMME);
        ProgrammeItem item = programmes.item(head.file(), prescription);
        return Answers.page(ProgrammePages.Templates.prescription(head, item, forms(item), DoseForm.SIDES, MORNINGS));
    }

    @POST
    @Transactional
    public Response changeDose(@RestPath long id, @RestPath long prescription) {
        CaseFile file = heads.find(id);
        ProgrammeItem item = programmes.item(file, prescription);
        Form form = posted.read();
        form.with("startedOn", Dates.shown(item.given().startedOn()));
        DoseForm typed = DoseForm.read(form, item.exercise(), file.openedOn(), LocalDate.now(clock));
        Cautions.check(form, item.verdict());
        requireCurrent(form, item, "repetitions");
        ProgrammePages.Forms forms = new ProgrammePages.Forms(form, reportForm(item), endForm(item));
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, item, forms));
        }
        try {
            item.given().requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.conflictsWith(DoseForm.show(item.given()), stale.stored());
            return Answers.conflict(page(file, item, forms));
        }
        typed.fill(item.given());
        item.given().consider(item.verdict().toConsider().stream().map(CaseSafety.Caution::key).collect(Collectors.toSet()));
        audit.record("changed the dose of an exercise", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme/" + prescription);
    }

    @POST
    @Path("/reports")
    @Transactional
    public Response report(@RestPath long id, @RestPath long prescription) {
        CaseFile file = heads.find(id);
        ProgrammeItem item = programmes.item(file, prescription);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        LocalDate weekTo = form.requiredDate("weekTo", "Week to");
        if (weekTo != null && (weekTo.isBefore(item.given().startedOn()) || weekTo.isAfter(today))) {
            form.error("weekTo", "The week ends between the start of the exercise, " + Dates.shown(item.given().startedOn()) + ", and today. You entered "
                    + Dates.shown(weekTo) + ".");
        }
        Integer done = form.integer("done", "Sessions done", 0, MOST_SESSIONS);
        Integer planned = form.integer("planned", "Sessions planned", 0, MOST_SESSIONS);
        Integer pain = form.integer("painDuring", "Pain", 0, 10);
        PainRule.Morning morning = form.choice("nextMorning", "Next morning", PainRule.Morning.class);
        if (done == null && pain == null && form.error("done") == null && form.error("painDuring") == null) {
            form.error("done", "Enter the sessions done, or the pain. With neither there is nothing to note.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, item, new ProgrammePages.Forms(DoseForm.show(item.given()), form, endForm(item))));
        }
        AdherenceEntry entry = entries.on(item.given(), weekTo).orElseGet(() -> new AdherenceEntry(item.given(), weekTo));
        entry.report(new Adherence(done, planned == null ? item.plannedAWeek() : planned), pain, morning == null ? PainRule.Morning.NOT_ASKED : morning, account.displayName());
        entries.persist(entry);
        audit.record("noted how an exercise is kept", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme/" + prescription);
    }

    @POST
    @Path("/end")
    @Transactional
    public Response end(@RestPath long id, @RestPath long prescription) {
        CaseFile file = heads.find(id);
        ProgrammeItem item = programmes.item(file, prescription);
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        LocalDate on = form.requiredDate("endedOn", "Last day");
        if (on != null && (on.isBefore(item.given().startedOn()) || on.isAfter(today))) {
            form.error("endedOn", "The last day lies between the start, " + Dates.shown(item.given().startedOn()) + ", and today. You entered " + Dates.shown(on) + ".");
        }
        String reason = form.requiredText("endReason", "The reason", 300);
        requireCurrent(form, item, "endedOn");
        ProgrammePages.Forms forms = new ProgrammePages.Forms(DoseForm.show(item.given()), reportForm(item), form);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, item, forms));
        }
        try {
            item.given().requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.conflictsWith(endForm(item), stale.stored());
            return Answers.conflict(page(file, item, forms));
        }
        item.given().end(on, reason);
        audit.record("ended an exercise", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/programme");
    }

    private static void requireCurrent(Form form, ProgrammeItem item, String field) {
        if (!item.given().current()) {
            form.error(field, "This exercise ended on " + Dates.shown(item.given().endedOn()) + ". Give it again instead.");
        }
    }

    private TemplateInstance page(CaseFile file, ProgrammeItem item, ProgrammePages.Forms forms) {
        return ProgrammePages.Templates.prescription(heads.head(file, CaseTab.PROGRAMME), item, forms, DoseForm.SIDES, MORNINGS);
    }

    private ProgrammePages.Forms forms(ProgrammeItem item) {
        return new ProgrammePages.Forms(DoseForm.show(item.given()), reportForm(item), endForm(item));
    }

    private Form reportForm(ProgrammeItem item) {
        return Form.empty().with("weekTo", Dates.shown(LocalDate.now(clock))).with("planned", item.plannedAWeek());
    }

    private Form endForm(ProgrammeItem item) {
        return Form.empty().with("version", item.given().version()).with("endedOn", Dates.shown(LocalDate.now(clock)));
    }
}
