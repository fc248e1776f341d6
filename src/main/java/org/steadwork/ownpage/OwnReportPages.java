package org.steadwork.ownpage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.account.AuditTrail;
import org.steadwork.body.BodyChart;
import org.steadwork.body.Zone;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.redflag.SafetyNet;
import org.steadwork.redflag.SafetyNets;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The report before a visit: pain, own activities, warning signs. It waits for a clinician and says plainly what to do until then. */
@Path("/own/report")
@PermitAll
class OwnReportPages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance ownReport(OwnReportView own);

        static native TemplateInstance ownReported(OwnReport report);
    }

    private static final int LONGEST_WORDS = 1000;

    @Inject
    OwnGuest guest;

    @Inject
    OwnReports reports;

    @Inject
    SymptomReports symptoms;

    @Inject
    OwnActivityRatings activities;

    @Inject
    SafetyNets safetyNets;

    @Inject
    BodyChart chart;

    @Inject
    PainRise pain;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response report() {
        Optional<OwnLink> link = guest.link();
        return link.isEmpty() ? Answers.seeOther("/own") : Answers.page(Templates.ownReport(view(link.get().caseFile(), Form.empty())));
    }

    /** What was just reported, and what to do now. */
    @GET
    @Path("/thanks")
    public Response reported() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        Optional<OwnReport> latest = reports.ofCase(link.get().caseFile().id()).stream().findFirst();
        return latest.isEmpty() ? Answers.seeOther("/own/report") : Answers.page(Templates.ownReported(latest.get()));
    }

    @POST
    @Transactional
    public Response send() {
        Optional<OwnLink> link = guest.link();
        if (link.isEmpty()) {
            return Answers.seeOther("/own");
        }
        CaseFile file = link.get().caseFile();
        Form form = posted.read();
        OwnReportView view = view(file, form);
        List<OwnReportLine> lines = new ArrayList<>();
        for (OwnReportView.Asked zone : view.zones()) {
            lines.add(OwnReportLine.ofZone(zone.key(), pain(form, "now_" + zone.key()), pain(form, "worst_" + zone.key()), pain(form, "average_" + zone.key())));
        }
        for (OwnReportView.Asked activity : view.activities()) {
            lines.add(OwnReportLine.ofActivity(Long.parseLong(activity.key()), form.integer("activity_" + activity.key(), activity.label(), 0, 10)));
        }
        String words = form.text("words", LONGEST_WORDS);
        List<String> now = ticked(view.now(), form);
        List<String> warnings = new ArrayList<>(now);
        warnings.addAll(ticked(view.today(), form));
        boolean empty = words == null && warnings.isEmpty() && lines.stream().allMatch(OwnReportPages::unanswered);
        if (empty && !form.hasErrors()) {
            form.error("words", "Nothing was filled in yet. Give at least one number, tick what is true, or write a few words.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.ownReport(view));
        }
        LocalDate today = LocalDate.now(clock);
        OwnReport report = new OwnReport(file, today, lines, warnings, !now.isEmpty(), painUp(file.id(), lines), words, Instant.now(clock));
        boolean sentTwice = reports.ofCase(file.id()).stream().filter(other -> other.reviewedAt() == null && other.reportedOn().equals(today)).anyMatch(other -> same(other, report));
        if (!sentTwice) {
            reports.persist(report);
            audit.record("reported before a visit", file.patient().id(), file.id(), "the patient, through the private link");
        }
        return Answers.seeOther("/own/report/thanks");
    }

    private OwnReportView view(CaseFile file, Form form) {
        List<OwnReportView.Asked> zones = symptoms.latest(file.id()).map(SymptomReport::readings).orElse(List.of()).stream().map(RegionReading::zone)
                .map(key -> new OwnReportView.Asked(key, chart.find(key).map(Zone::label).orElse(key))).toList();
        List<OwnReportView.Asked> named = activities.activities(file.id()).stream().map(a -> new OwnReportView.Asked(String.valueOf(a.id()), a.words())).toList();
        SafetyNet.Warnings warnings = safetyNets.of(file.id());
        return new OwnReportView(file, form, zones, named, signs("now", warnings.now()), signs("today", warnings.today()));
    }

    private static List<OwnReportView.Sign> signs(String prefix, List<String> words) {
        return IntStream.range(0, words.size()).mapToObj(i -> new OwnReportView.Sign(prefix + i, words.get(i))).toList();
    }

    private static List<String> ticked(List<OwnReportView.Sign> signs, Form form) {
        return signs.stream().filter(sign -> form.is("sign", sign.key())).map(OwnReportView.Sign::words).toList();
    }

    private static Integer pain(Form form, String field) {
        return form.integer(field, "Pain", 0, 10);
    }

    private static boolean unanswered(OwnReportLine line) {
        return line.now() == null && line.worst() == null && line.average() == null && line.rating() == null;
    }

    /** True when any number of any place rose by more than error since the last report that a clinician took. */
    private boolean painUp(long caseId, List<OwnReportLine> lines) {
        Map<String, RegionReading> before = symptoms.latest(caseId).map(SymptomReport::readings).orElse(List.of()).stream()
                .collect(Collectors.toMap(RegionReading::zone, reading -> reading));
        return lines.stream().filter(line -> !line.isActivity()).anyMatch(line -> {
            RegionReading was = before.get(line.about());
            return was != null && (pain.beyondError(was.now(), line.now()) || pain.beyondError(was.worst(), line.worst()) || pain.beyondError(was.average(), line.average()));
        });
    }

    private static boolean same(OwnReport one, OwnReport other) {
        return one.warnings().equals(other.warnings()) && Objects.equals(one.ownWords(), other.ownWords()) && numbers(one).equals(numbers(other));
    }

    private static List<String> numbers(OwnReport report) {
        return report.lines().stream().map(line -> line.about() + " " + line.now() + " " + line.worst() + " " + line.average() + " " + line.rating()).toList();
    }
}
