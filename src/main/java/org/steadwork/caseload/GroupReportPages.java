package org.steadwork.caseload;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.PersistenceException;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.account.PasswordAsked;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.people.Employer;
import org.steadwork.people.Employers;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One group report: the draft with its pages, the word to the reader, the signature of the lead, the signed file. */
@Path("/employers/{employer: \\d+}/group-report/{period: [0-9a-z_-]+}")
@RolesAllowed("clinician")
class GroupReportPages {

    private static final int SCREEN_DPI = 110;
    private static final String SIGNED_MEANWHILE = "This report was signed meanwhile. It stays as it is.";
    private static final String COUNTS_OTHERWISE = "The numbers changed since you opened the page. Nothing was signed: look at them again.";

    @Inject
    Employers employers;

    @Inject
    GroupReports reports;

    @Inject
    GroupReportCounting counting;

    @Inject
    GroupReportSigning signing;

    @Inject
    CommentCheck comments;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PasswordAsked password;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath("employer") long id, @RestPath String period) {
        return Answers.page(page(employer(id), ended(period), null, null));
    }

    @POST
    @Transactional
    public Response save(@RestPath("employer") long id, @RestPath String period) {
        Employer employer = employer(id);
        ReportPeriod asked = ended(period);
        Form form = posted.read();
        Optional<GroupReport> stored = reports.ofForChange(employer, asked);
        if (stored.flatMap(reports::signed).isPresent()) {
            return Answers.conflict(page(employer, asked, form, SIGNED_MEANWHILE));
        }
        String comment = form.text("comment", GroupReport.LONGEST_COMMENT);
        comments.check(form, "comment", employer);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(employer, asked, form, null));
        }
        try {
            stored.ifPresent(report -> report.requireVersion(form.version()));
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(employer, asked, form.conflictsWith(Form.empty().with("comment", stored.get().comment()), stale.stored()), null));
        }
        GroupReport report = stored.orElseGet(() -> new GroupReport(employer, asked));
        report.say(comment, account.get(), Instant.now(clock));
        reports.keep(report);
        audit.record("saved group report", null, null, report.reference());
        return Answers.seeOther("/employers/" + id + "/group-report/" + asked.key());
    }

    @POST
    @Path("/sign")
    @RolesAllowed("lead")
    public Response sign(@RestPath("employer") long id, @RestPath String period) {
        Employer employer = employer(id);
        ReportPeriod asked = ended(period);
        Form form = posted.read();
        Account signer = account.get();
        Optional<GroupReport> stored = reports.of(employer, asked);
        if (stored.flatMap(reports::signed).isPresent()) {
            return Answers.conflict(page(employer, asked, form, SIGNED_MEANWHILE));
        }
        password.check(form, "password", signer);
        String comment = form.text("comment", GroupReport.LONGEST_COMMENT);
        String kept = stored.map(GroupReport::comment).orElse(null);
        if (!form.hasErrors() && !Objects.equals(comment, kept)) {
            form.error("comment", "The word to the reader differs from the saved draft. Save it, look at the pages, then sign.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(employer, asked, form, null));
        }
        try {
            signing.sign(employer, asked, form.version(), form.value("seen"), signer);
        } catch (GroupReportSigning.ChangedMeanwhile changed) {
            return Answers.conflict(page(employer, asked, form, COUNTS_OTHERWISE));
        } catch (StaleVersionException | PersistenceException meanwhile) {
            reports.forget();
            Employer now = employer(id);
            boolean signed = reports.of(now, asked).flatMap(reports::signed).isPresent();
            return Answers.conflict(page(now, asked, form, signed ? SIGNED_MEANWHILE : "Somebody saved the draft in between. Nothing was signed: look at it again."));
        }
        return Answers.seeOther("/employers/" + id + "/group-report/" + asked.key());
    }

    @GET
    @Path("/page-{page: \\d+}.png")
    public Response picture(@RestPath("employer") long id, @RestPath String period, @RestPath int page) {
        Employer employer = employer(id);
        ReportPeriod asked = ended(period);
        Optional<GroupReport> stored = reports.of(employer, asked);
        byte[] file = stored.flatMap(reports::signed).map(signing::whole)
                .orElseGet(() -> signing.pdf(counting.printed(employer, asked, stored.orElse(null), account.get(), ""), account.get()).bytes());
        try {
            return Response.ok(PrintedPages.png(file, page, SCREEN_DPI), "image/png").header("Cache-Control", "no-store").build();
        } catch (IllegalArgumentException e) {
            throw new NotFoundException(e);
        }
    }

    @GET
    @Path("/report.pdf")
    public Response download(@RestPath("employer") long id, @RestPath String period) {
        SignedGroupReport signed = reports.of(employer(id), ended(period)).flatMap(reports::signed).orElseThrow(NotFoundException::new);
        byte[] file = signing.whole(signed);
        audit.record("downloaded group report", null, null, signed.reference());
        return Response.ok(file, "application/pdf").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"group-report-" + signed.reference() + ".pdf\"").build();
    }

    /** @param form what was typed, null for what is stored */
    private TemplateInstance page(Employer employer, ReportPeriod period, Form form, String note) {
        Optional<GroupReport> stored = reports.of(employer, period);
        Optional<SignedGroupReport> signed = stored.flatMap(reports::signed);
        if (signed.isPresent()) {
            return GroupReportListPages.Templates.groupReport(new GroupReportView(employer, period, signing.read(signed.get()), signed.get(), signed.get().pages(), -1, "", note),
                    form == null ? Form.empty() : form);
        }
        PrintedGroupReport draft = counting.printed(employer, period, stored.orElse(null), account.get(), "");
        int version = stored.map(GroupReport::version).orElse(-1);
        Form shown = form == null ? Form.empty().with("comment", draft.comment()).with("version", version) : form;
        return GroupReportListPages.Templates.groupReport(new GroupReportView(employer, period, draft, null, signing.pdf(draft, account.get()).pages(), version,
                GroupReportSigning.fingerprint(draft), note), shown);
    }

    private Employer employer(long id) {
        return employers.findByIdOptional(id).orElseThrow(NotFoundException::new);
    }

    /** Returns a half-year that is over; one that is not, or none, is not found. */
    private ReportPeriod ended(String key) {
        return ReportPeriod.of(key).filter(period -> period.ended(LocalDate.now(clock))).orElseThrow(NotFoundException::new);
    }
}
