package org.steadwork.retention;

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
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.account.PasswordAsked;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** The lead's review of old records: who is due, what holds them, and in two steps their removal. */
@Path("/clinic/retention")
@RolesAllowed("lead")
class RetentionPages {

    @CheckedTemplate(basePath = "retention", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance retention(List<Retentions.Due> due, List<Removal> removals, List<Period> periods, int years, int age, int most);

        static native TemplateInstance person(Shown shown, Form form);
    }

    /** A usual period somewhere. */
    public record Period(String place, int years, String basis, String source) {
    }

    /**
     * One person, as the page shows them.
     *
     * @param rows    what would go, by table
     * @param blocked why nothing can go now; null when it can
     */
    public record Shown(Patient patient, List<CaseFile> cases, List<LegalHold> holds, boolean due, String blocked, int rows, Map<String, Integer> tables,
            List<Option> grounds, List<Option> caseOptions) {
    }

    private static final String BASE = "/clinic/retention/";

    @Inject
    Retentions retentions;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PasswordAsked password;

    @Inject
    PostedForm posted;

    @ConfigProperty(name = "steadwork.retention.years")
    int years;

    @ConfigProperty(name = "steadwork.retention.not-before-age")
    int notBeforeAge;

    @GET
    public Response list() {
        return Answers.page(Templates.retention(retentions.due(), retentions.removals(), periods(), years, notBeforeAge, Retentions.MOST_SHOWN));
    }

    @GET
    @Path("{patient: \\d+}")
    public Response person(@RestPath long patient) {
        Shown shown = shown(patient);
        audit.record("viewed retention", patient, null, null);
        return Answers.page(Templates.person(shown, Form.empty()));
    }

    @POST
    @Path("{patient: \\d+}/holds")
    @Transactional
    public Response hold(@RestPath long patient) {
        Shown shown = shown(patient);
        Form form = posted.read();
        CaseFile file = shown.cases().stream().filter(one -> String.valueOf(one.id()).equals(form.value("case"))).findFirst().orElse(null);
        if (file == null) {
            form.error("case", "Choose the case to hold.");
        }
        String reason = form.requiredText("reason", "Reason", LegalHold.LONGEST_REASON);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.person(shown, form));
        }
        retentions.hold(file, reason);
        return Answers.seeOther(BASE + patient);
    }

    @POST
    @Path("{patient: \\d+}/holds/{hold: \\d+}/lift")
    @Transactional
    public Response lift(@RestPath long patient, @RestPath long hold) {
        Shown shown = shown(patient);
        LegalHold found = shown.holds().stream().filter(one -> one.id() == hold).findFirst().orElseThrow(NotFoundException::new);
        Form form = posted.read();
        if (!found.inForce() || form.version() != found.version()) {
            form.error("case", "This hold was changed meanwhile. What stands here now is how it is.");
            return Answers.conflict(Templates.person(shown, form));
        }
        retentions.lift(found);
        return Answers.seeOther(BASE + patient);
    }

    @POST
    @Path("{patient: \\d+}/remove")
    public Response remove(@RestPath long patient) {
        Shown shown = shown(patient);
        Form form = posted.read();
        RemovalGround ground = form.requiredChoice("ground", "Ground", RemovalGround.class);
        if (shown.blocked() != null) {
            form.error("ground", shown.blocked());
        } else if (ground == RemovalGround.PERIOD_OVER && !shown.due()) {
            form.error("ground", "The period is not over yet. Choose another ground, or leave the record.");
        }
        if (!form.value("fileNumber").strip().equalsIgnoreCase(shown.patient().fileNumber())) {
            form.error("fileNumber", "Type the file number of this person, as it stands above.");
        }
        password.check(form, "password", account.get());
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.person(shown, form.with("password", "")));
        }
        retentions.remove(shown.patient(), ground);
        return Answers.seeOther("/clinic/retention");
    }

    private Shown shown(long id) {
        Patient patient = patients.withAll(id).orElseThrow(NotFoundException::new);
        List<CaseFile> all = cases.ofPatient(id);
        List<LegalHold> holds = retentions.holds(id);
        String blocked = all.stream().anyMatch(CaseFile::open) ? "A case is open. Close it first."
                : holds.stream().anyMatch(LegalHold::inForce) ? "A case is held. Nothing of this person is removed while a hold is in force." : null;
        Map<String, Integer> tables = retentions.counts(id);
        return new Shown(patient, all, holds, retentions.isDue(id), blocked, tables.values().stream().mapToInt(Integer::intValue).sum(), tables,
                Option.of(RemovalGround.class, RemovalGround::label), all.stream().map(one -> new Option(String.valueOf(one.id()), one.complaint())).toList());
    }

    private static List<Period> periods() {
        return Content.yaml("retention/periods.yaml").entries("periods").stream().map(RetentionPages::period).toList();
    }

    private static Period period(Entry entry) {
        return new Period(entry.text("place"), entry.integer("years"), entry.text("basis"), entry.text("source"));
    }
}
