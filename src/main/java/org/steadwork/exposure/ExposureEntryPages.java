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
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Calculators;
import org.steadwork.bench.CalculatorView;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Keeps a new result with a case, or one in the place of an earlier one; the result can be looked at before it is kept. */
@Path("/cases/{id: \\d+}/exposure/new/{calculator: [a-z-]+}")
@RolesAllowed("clinician")
class ExposureEntryPages {

    @CheckedTemplate(basePath = "exposure", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance exposureEntry(CaseHead head, ExposureView.Entry view);
    }

    private static final int LONGEST_TASK = 120;
    private static final int LONGEST_REASON = 300;

    @Inject
    CaseHeads heads;

    @Inject
    ExposureRecords records;

    @Inject
    ExposureMethods methods;

    @Inject
    Calculators calculators;

    @Inject
    CurrentAccount who;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response form(@RestPath long id, @PathParam("calculator") String key, @RestQuery String corrects) {
        Calculator calculator = find(key);
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        ExposureRecord earlier = earlier(id, corrects, key);
        Form form = calculators.form(calculator, earlier == null ? Map.of() : methods.read(earlier.entries()));
        form.with("record-on", Dates.shown(earlier == null ? LocalDate.now(clock) : earlier.assessedOn())).with("record-task", earlier == null ? "" : earlier.task());
        if (earlier != null) {
            form.with("record-corrects", earlier.id());
        }
        return Answers.page(page(head, calculator, form, null, earlier));
    }

    @POST
    @Transactional
    public Response keep(@RestPath long id, @PathParam("calculator") String key) {
        Calculator calculator = find(key);
        CaseFile file = heads.find(id);
        Form form = posted.read();
        ExposureRecord earlier = earlier(id, form.value("record-corrects"), key);
        if (calculators.changeRows(calculator, form)) {
            return Answers.page(page(heads.head(file, CaseTab.WORK_PLACE), calculator, form, null, earlier));
        }
        String task = form.requiredText("record-task", "Task", LONGEST_TASK);
        LocalDate on = day(form, file);
        String reason = earlier == null ? null : form.requiredText("record-reason", "Reason for the correction", LONGEST_REASON);
        var computed = calculators.compute(calculator, form);
        if (earlier != null && !earlier.standing()) {
            form.error("record-reason", "The earlier result was corrected or withdrawn meanwhile. Look at it again before recording another.");
        }
        if (form.hasErrors() || computed.isEmpty()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), calculator, form, null, earlier));
        }
        if (form.is("do", "look")) {
            return Answers.page(page(heads.head(file, CaseTab.WORK_PLACE), calculator, form, computed.get().answer(), earlier));
        }
        ExposureRecord record = new ExposureRecord(file, task, on, who.displayName(), clock.instant());
        methods.keep(record, calculator, computed.get().given(), computed.get().answer());
        if (earlier != null) {
            record.correct(earlier, reason);
        }
        records.persistAndFlush(record);
        audit.record(earlier == null ? "recorded exposure" : "corrected exposure", file.patient().id(), id, calculator.key());
        return Answers.seeOther("/cases/" + id + "/exposure/" + record.id());
    }

    private LocalDate day(Form form, CaseFile file) {
        LocalDate on = form.requiredDate("record-on", "Looked at on");
        LocalDate today = LocalDate.now(clock);
        if (on != null && (on.isAfter(today) || on.isBefore(file.patient().birthDate()))) {
            form.error("record-on", "Looked at on must be a day up to today, " + Dates.shown(today) + ". You entered " + Dates.shown(on) + ".");
        }
        return on;
    }

    /** The record to be corrected, of this case and this method; null when none is named. */
    private ExposureRecord earlier(long caseId, String named, String method) {
        if (named == null || named.isBlank()) {
            return null;
        }
        if (!named.matches("\\d{1,18}")) {
            throw new NotFoundException();
        }
        return records.find(caseId, Long.parseLong(named)).filter(record -> record.method().equals(method)).orElseThrow(NotFoundException::new);
    }

    private Calculator find(String key) {
        return methods.named(key).orElseThrow(NotFoundException::new);
    }

    private static TemplateInstance page(CaseHead head, Calculator calculator, Form form, BenchAnswer answer, ExposureRecord earlier) {
        return Templates.exposureEntry(head, new ExposureView.Entry(CalculatorView.of(calculator, form, answer), earlier,
                "/cases/" + head.id() + "/exposure/new/" + calculator.key()));
    }
}
