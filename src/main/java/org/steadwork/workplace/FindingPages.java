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
import org.jboss.resteasy.reactive.RestPath;
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

/** What became of a finding: advised, agreed with whom, done, checked. */
@Path("/cases/{id: \\d+}/work-place/findings/{finding: \\d+}")
@RolesAllowed("clinician")
class FindingPages {

    @Inject
    CaseHeads heads;

    @Inject
    Findings findings;

    @Inject
    FindingLives lives;

    @Inject
    WorkplaceContent content;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id, @RestPath("finding") long findingId) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        Finding finding = find(id, findingId);
        return Answers.page(page(head, finding, stored(finding).with("stage", "").with("on", Dates.shown(LocalDate.now(clock)))));
    }

    @POST
    @Transactional
    public Response record(@RestPath long id, @RestPath("finding") long findingId) {
        CaseFile file = heads.find(id);
        Finding finding = find(id, findingId);
        Form form = posted.read();
        FindingStage stage = form.requiredChoice("stage", "What became of it", FindingStage.class);
        LocalDate on = form.requiredDate("on", "On");
        if (on != null && (on.isBefore(finding.foundOn()) || on.isAfter(LocalDate.now(clock)))) {
            form.error("on", "It was found on " + Dates.shown(finding.foundOn()) + "; the day lies between then and today. You entered "
                    + Dates.shown(on) + ".");
        }
        String with = form.text("agreedWith", 200);
        if (stage == FindingStage.AGREED && with == null) {
            form.error("agreedWith", "Agreed with whom? Enter a name or an office, for example the office manager.");
        }
        String note = form.text("note", 500);
        if (stage == FindingStage.FOUND) {
            form.error("stage", "What became of it: choose one of the answers offered.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), finding, form));
        }
        try {
            finding.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), finding, form.conflictsWith(stored(finding), stale.stored())));
        }
        lives.record(finding, stage, on, with);
        finding.note(note);
        audit.record("recorded what became of a finding", file.patient().id(), id, finding.criterionId());
        return Answers.seeOther("/cases/" + id + "/work-place");
    }

    /** Undoes the last step that still stands; another one was recorded meanwhile when the number differs. */
    @POST
    @Path("/undo")
    @Transactional
    public Response undo(@RestPath long id, @RestPath("finding") long findingId) {
        CaseFile file = heads.find(id);
        Finding finding = find(id, findingId);
        Form form = posted.read();
        List<FindingStep> steps = lives.steps(finding);
        FindingStep last = lives.last(steps).orElse(null);
        String reason = form.requiredText("undoReason", "The reason", 300);
        if (last == null) {
            form.error("undoReason", "There is no step to undo.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), finding, stored(finding).with("undoReason", form.value("undoReason"))
                    .errorsOf(form)));
        }
        if (!form.value("step").equals(String.valueOf(last.id()))) {
            Form shown = stored(finding).with("undoReason", form.value("undoReason"));
            return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), finding, shown.conflictsWith(Form.empty(), finding.version())));
        }
        lives.undo(finding, last, steps, reason);
        audit.record("undid a step of a finding", file.patient().id(), id, finding.criterionId());
        return Answers.seeOther("/cases/" + id + "/work-place/findings/" + findingId);
    }

    private Finding find(long caseId, long findingId) {
        return findings.find(caseId, findingId).orElseThrow(NotFoundException::new);
    }

    private static Form stored(Finding finding) {
        return Form.empty().with("version", finding.version()).with("agreedWith", finding.agreedWith()).with("note", finding.note());
    }

    private TemplateInstance page(CaseHead head, Finding finding, Form form) {
        String label = content.criterion(finding.criterionId()).map(c -> c.label()).orElse(finding.criterionId());
        String adjustment = content.criterion(finding.criterionId()).map(c -> c.adjustment()).orElse("");
        return WorkplacePages.Templates.findingLife(head, new FindingFields(form, finding, label, lives.of(finding), adjustment,
                "/cases/" + head.id() + "/work-place/findings/" + finding.id()));
    }
}
