package org.steadwork.ownpage;

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
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.SelfReports;
import org.steadwork.exercise.SheetCard;
import org.steadwork.exercise.Sheets;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.outcome.OwnActivity;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;
import org.steadwork.web.QrDrawing;

/** The clinician's side of the patient's own page: the link, and what came through it. */
@Path("/cases/{id: \\d+}/own-page")
@RolesAllowed("clinician")
class OwnCasePages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance ownCase(CaseHead head, OwnCaseView view);
    }

    private static final int USUAL_WEEKS = 6;
    private static final int LONGEST_MONTHS = 12;
    private static final int LONGEST_NOTE = 300;

    @ConfigProperty(name = "steadwork.public-address")
    String publicAddress;

    @Inject
    CaseHeads heads;

    @Inject
    OwnLinks links;

    @Inject
    OwnReports reports;

    @Inject
    SessionTicks ticks;

    @Inject
    TickedWeeks ticked;

    @Inject
    OwnReportTaking taking;

    @Inject
    OwnActivityRatings activities;

    @Inject
    Sheets sheets;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    SelfReports selfReports;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response page(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        return Answers.page(Templates.ownCase(head, view(head.file(), usual(), null)));
    }

    /** Makes a link. Its address is on the page that answers, and nowhere else: only a hash of it is stored. */
    @POST
    @Path("/links")
    @Transactional
    public Response make(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate until = form.requiredDate("until", "Opens until");
        LocalDate today = LocalDate.now(clock);
        if (until != null && (until.isBefore(today) || until.isAfter(today.plusMonths(LONGEST_MONTHS)))) {
            form.error("until", "A link opens until a day from today, for at most " + LONGEST_MONTHS + " months. You entered " + Dates.shown(until) + ".");
        }
        if (!file.open()) {
            form.error("until", "The case is closed: there is no programme to open.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, form));
        }
        String token = links.make(file, until, account.displayName());
        links.flush();
        audit.record("made a link to the own page", file.patient().id(), id, "opens until " + Dates.shown(until));
        if (form.value("do").equals("sheet")) {
            return Answers.page(sheets.of(file, new SheetCard(address(token), code(token), until)));
        }
        return Answers.page(Templates.ownCase(heads.head(file, CaseTab.PROGRAMME), view(file, usual(), token)));
    }

    @POST
    @Path("/links/{link: \\d+}/revoke")
    @Transactional
    public Response revoke(@RestPath long id, @RestPath long link) {
        CaseFile file = heads.find(id);
        links.ofCase(id).stream().filter(one -> one.id() == link).findFirst().orElseThrow(NotFoundException::new).revoke(account.displayName(), Instant.now(clock));
        audit.record("revoked a link to the own page", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/own-page");
    }

    /** Takes a report into the case, or notes why it is not taken. */
    @POST
    @Path("/reports/{own: \\d+}")
    @Transactional
    public Response looked(@RestPath long id, @RestPath long own) {
        CaseFile file = heads.find(id);
        OwnReport report = reports.ofCase(id).stream().filter(one -> one.id() == own).findFirst().orElseThrow(NotFoundException::new);
        Form form = posted.read();
        String field = "note" + own;
        String note = form.text(field, LONGEST_NOTE);
        boolean take = form.value("do").equals("take");
        if (!take && note == null && form.error(field) == null) {
            form.error(field, "Say what you did with it, for example: phoned, agreed to wait for the visit.");
        }
        List<String> stand = take ? taking.inTheWay(report) : List.of();
        if (!stand.isEmpty()) {
            form.error(field, "The case has " + String.join(", ", stand) + " already. Add what is new there, and note that here.");
        }
        if (report.reviewedAt() != null) {
            form.error(field, "Looked at meanwhile by " + report.reviewedBy() + ".");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, form));
        }
        try {
            report.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            form.error(field, "This report changed since the page was loaded. Look at it again.");
            return Answers.conflict(again(file, form));
        }
        if (take) {
            taking.take(report);
        }
        report.reviewed(account.displayName(), Instant.now(clock), take ? note == null ? "taken into the case" : "taken into the case: " + note : note);
        audit.record(take ? "took a patient's report into the case" : "looked at a patient's report", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/own-page");
    }

    /** Notes that somebody looked at sessions after which pain had risen. */
    @POST
    @Path("/alarms")
    @Transactional
    public Response alarmsSeen(@RestPath long id) {
        CaseFile file = heads.find(id);
        ticks.alarms(id).forEach(tick -> tick.seen(account.displayName(), Instant.now(clock)));
        audit.record("looked at sessions with more pain", file.patient().id(), id, null);
        return Answers.seeOther("/cases/" + id + "/own-page");
    }

    /** Takes the last seven days as the adherence that reviews show. */
    @POST
    @Path("/week")
    @Transactional
    public Response takeWeek(@RestPath long id) {
        CaseFile file = heads.find(id);
        OwnWeeks weeks = ticked.of(file);
        LocalDate today = LocalDate.now(clock);
        for (OwnWeeks.Row row : weeks.rows()) {
            OwnWeeks.Cell cell = weeks.latest(row);
            if (!cell.told()) {
                continue;
            }
            selfReports.take(id, row.prescription(), today, cell.adherence(), cell.highestPain(), "Patient, looked at by " + account.displayName());
        }
        audit.record("took the patient's ticks as adherence", file.patient().id(), id, "week to " + Dates.shown(today));
        return Answers.seeOther("/cases/" + id + "/programme");
    }

    private TemplateInstance again(CaseFile file, Form form) {
        return Templates.ownCase(heads.head(file, CaseTab.PROGRAMME), view(file, form, null));
    }

    private OwnCaseView view(CaseFile file, Form form, String token) {
        LocalDate today = LocalDate.now(clock);
        Map<Long, OwnActivity> named = activities.activities(file.id()).stream().collect(Collectors.toMap(OwnActivity::id, Function.identity()));
        List<OwnCaseView.Report> told = reports.ofCase(file.id()).stream().map(report -> new OwnCaseView.Report(report, taking.words(report, named))).toList();
        OwnWeeks weeks = ticked.of(file);
        List<SessionTick> late = ticks.meanwhile(file.id(), today.minusWeeks(OwnWeeks.WEEKS).plusDays(1));
        boolean any = weeks.rows().stream().flatMap(row -> row.cells().stream()).anyMatch(cell -> cell.adherence().done() > 0);
        return new OwnCaseView(links.ofCase(file.id()).stream().map(link -> OwnCaseView.Link.of(link, today)).toList(), told, ticks.alarms(file.id()), late, weeks, any, names(file, late), form,
                token == null ? null : address(token), token == null ? null : code(token), publicAddress.matches("https?://(localhost|127\\..*|\\[::1])(:\\d+)?"));
    }

    private String address(String token) {
        return publicAddress + "/own/" + token;
    }

    private String code(String token) {
        return QrDrawing.svg(address(token), "The address beside it as a code to scan");
    }

    private Map<String, String> names(CaseFile file, List<SessionTick> late) {
        return Stream.concat(ticks.alarms(file.id()).stream(), late.stream()).map(tick -> tick.prescription().exerciseKey()).distinct()
                .collect(Collectors.toMap(Function.identity(), key -> catalogue.find(key).map(Exercise::name).orElse(key)));
    }

    private Form usual() {
        return Form.empty().with("until", Dates.shown(LocalDate.now(clock).plusWeeks(USUAL_WEEKS)));
    }
}
