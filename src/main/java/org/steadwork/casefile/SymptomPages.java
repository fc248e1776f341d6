package org.steadwork.casefile;

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
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.body.BodyChart;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The symptoms of a case: where, how much, when; the reports of each day and what differs between them. */
@Path("/cases/{id: \\d+}/symptoms")
@RolesAllowed("clinician")
class SymptomPages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance symptoms(CaseHead head, SymptomView view);
    }

    private static final String REMOVE = "remove-";

    @Inject
    CaseHeads heads;

    @Inject
    SymptomReports reports;

    @Inject
    SymptomViews views;

    @Inject
    Visits visits;

    @Inject
    BodyChart chart;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** Shows the latest report, or the start of the first. */
    @GET
    public Response latest(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.SYMPTOMS);
        List<SymptomReport> all = reports.of(id);
        if (all.isEmpty()) {
            return page(head, SymptomForm.blank(today()), null, all);
        }
        return page(head, SymptomForm.show(all.get(0)), all.get(0), all);
    }

    /** Begins a report of today, empty or from an earlier one. */
    @GET
    @Path("/new")
    public Response start(@RestPath long id, @RestQuery Long from) {
        CaseHead head = heads.open(id, CaseTab.SYMPTOMS);
        List<SymptomReport> all = reports.of(id);
        Form form = from == null ? SymptomForm.blank(today()) : SymptomForm.start(among(all, from), today());
        return page(head, form, null, all);
    }

    @GET
    @Path("/{reportId: \\d+}")
    public Response report(@RestPath long id, @RestPath long reportId) {
        CaseHead head = heads.open(id, CaseTab.SYMPTOMS);
        List<SymptomReport> all = reports.of(id);
        SymptomReport report = among(all, reportId);
        return page(head, SymptomForm.show(report), report, all);
    }

    @POST
    @Path("/new")
    @Transactional
    public Response startPosted(@RestPath long id) {
        CaseFile file = heads.find(id);
        return posted(file, null, reports.ofForChange(id));
    }

    @POST
    @Path("/{reportId: \\d+}")
    @Transactional
    public Response reportPosted(@RestPath long id, @RestPath long reportId) {
        CaseFile file = heads.find(id);
        List<SymptomReport> all = reports.ofForChange(id);
        return posted(file, among(all, reportId), all);
    }

    private Response posted(CaseFile file, SymptomReport report, List<SymptomReport> all) {
        Form form = posted.read();
        String act = form.value("do");
        if (act.equals("add") || act.startsWith(REMOVE)) {
            return changedRows(file, form, act, report, all);
        }
        SymptomForm typed = SymptomForm.read(form, file, chart, today());
        Optional<SymptomReport> sameDay = all.stream().filter(other -> other.reportedOn().equals(typed.reportedOn())).findFirst();
        if (report != null && sameDay.isPresent() && sameDay.get() != report) {
            form.error("reportedOn", "There is a report of " + Dates.shown(typed.reportedOn()) + " already. Open it in the list of"
                    + " reports, or enter another day.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(template(file, form, report, all, null, List.of()));
        }
        SymptomReport stored = report == null ? sameDay.orElse(null) : report;
        // a first report of a day that somebody else has made meanwhile was made from no version at all
        if (stored != null && form.version() != stored.version()) {
            if (same(stored, typed)) {
                return after(file, stored, act);
            }
            return conflict(file, form, typed, stored, all);
        }
        return after(file, save(file, stored, typed), act);
    }

    private SymptomReport save(CaseFile file, SymptomReport stored, SymptomForm typed) {
        SymptomReport report = stored == null ? new SymptomReport(file, typed.reportedOn(), today()) : stored;
        report.moveTo(typed.reportedOn(), visits.on(file.id(), typed.reportedOn()).orElse(null), today());
        report.report(typed.pattern(), typed.readings(), typed.symptomFree());
        report.savedBy(account.displayName(), Instant.now(clock));
        reports.persistAndFlush(report);
        audit.record(stored == null ? "recorded symptoms" : "changed symptoms", file.patient().id(), file.id(),
                Dates.shown(typed.reportedOn()));
        return report;
    }

    private Response conflict(CaseFile file, Form form, SymptomForm typed, SymptomReport stored, List<SymptomReport> all) {
        List<SymptomChanges.Change> theirs = SymptomChanges.between(stored.pattern(), stored.readings(), typed.pattern(),
                typed.readings(), chart);
        form.conflictsWith(SymptomForm.show(stored), stored.version());
        return Answers.conflict(template(file, form, stored, all, null, theirs));
    }

    /** Adds or removes a row for a browser without script; nothing is stored, nothing typed is lost. */
    private Response changedRows(CaseFile file, Form form, String act, SymptomReport report, List<SymptomReport> all) {
        List<String> zones = new ArrayList<>(form.values("zone"));
        String chosen = form.value("add");
        if (act.startsWith(REMOVE)) {
            zones.remove(act.substring(REMOVE.length()));
        } else if (chart.find(chosen).isEmpty()) {
            form.error("add", "Choose a zone from the list, then add it.");
            return Answers.unprocessable(template(file, form, report, all, null, List.of()));
        } else if (!zones.contains(chosen)) {
            zones.add(chosen);
        }
        form.withAll("zone", zones);
        return Answers.page(template(file, form, report, all, act.startsWith(REMOVE) ? null : chosen, List.of()));
    }

    private static Response after(CaseFile file, SymptomReport report, String act) {
        return Answers.seeOther(act.equals("save-red-flags") ? CaseTab.RED_FLAGS.href(file.id())
                : CaseTab.SYMPTOMS.href(file.id()) + "/" + report.id());
    }

    private boolean same(SymptomReport stored, SymptomForm typed) {
        return stored.symptomFree() == typed.symptomFree() && Objects.equals(stored.pattern(), typed.pattern())
                && SymptomChanges.between(stored.pattern(), stored.readings(), typed.pattern(), typed.readings(), chart).isEmpty();
    }

    private Response page(CaseHead head, Form form, SymptomReport report, List<SymptomReport> all) {
        return Answers.page(Templates.symptoms(head, views.view(head.file(), form, report, all, null, List.of())));
    }

    private TemplateInstance template(CaseFile file, Form form, SymptomReport report, List<SymptomReport> all, String added,
            List<SymptomChanges.Change> theirs) {
        return Templates.symptoms(heads.head(file, CaseTab.SYMPTOMS), views.view(file, form, report, all, added, theirs));
    }

    private static SymptomReport among(List<SymptomReport> all, long reportId) {
        return all.stream().filter(report -> report.id() == reportId).findFirst().orElseThrow(NotFoundException::new);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
