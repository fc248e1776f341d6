package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.VisitKind;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The waiting list: who waits, for what, and the next times that fit each. */
@Path("/diary/waiting")
@RolesAllowed("staff")
class WaitingPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance waiting(List<WaitingView.Row> rows);

        static native TemplateInstance waitingEdit(WaitingView view);
    }

    private static final int DAYS_AHEAD = 21;
    private static final int PROPOSED = 3;
    private static final int MID_MORNING = 600;

    @Inject
    WaitingLists lists;

    @Inject
    Availability availability;

    @Inject
    Proposals proposals;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    Accounts accounts;

    @Inject
    DiaryContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        LocalDate today = LocalDate.now(clock);
        LocalDate last = today.plusDays(DAYS_AHEAD);
        Openings openings = availability.between(today, last);
        Map<Long, Account> clinicians = openings.clinicians().stream().collect(Collectors.toMap(Account::id, Function.identity()));
        return Answers.page(Templates.waiting(lists.open().stream().map(entry -> new WaitingView.Row(entry, lists.times(entry), offered(openings, clinicians, entry, last)))
                .toList()));
    }

    private List<Proposal> offered(Openings openings, Map<Long, Account> clinicians, WaitingEntry entry, LocalDate last) {
        LocalDate from = entry.earliestOn().isAfter(openings.first()) ? entry.earliestOn() : openings.first();
        LocalDate to = entry.latestOn() == null || entry.latestOn().isAfter(last) ? last : entry.latestOn();
        List<Account> asked = entry.clinician() == null ? openings.clinicians() : List.of(clinicians.getOrDefault(entry.clinician().id(), entry.clinician()));
        int wanted = entry.times().stream().map(content::partOfDay).flatMap(Optional::stream).map(part -> part.span().from()).findFirst().orElse(MID_MORNING);
        return proposals.of(openings, asked, BookViews.days(from, to), new Proposals.Search(entry.patient().id(), content.length(entry.kind()), from, wanted, PROPOSED, 1));
    }

    @GET
    @Path("/new")
    public Response add(@RestQuery String patient) {
        Long id = Typed.number(patient);
        Patient who = id == null ? null : patients.withAll(id).orElseThrow(NotFoundException::new);
        if (who == null) {
            return Answers.seeOther("/diary/book");
        }
        List<CaseFile> open = open(who);
        return Answers.page(page(null, who, Form.empty().with("patient", id).with("priority", "usual").with("clinician", open.isEmpty() ? WaitingForm.ANYBODY
                : open.get(0).clinician().id()).with("kind", BookForm.value(open.isEmpty() ? VisitKind.INITIAL : VisitKind.FOLLOW_UP))));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted() {
        Form form = posted.read();
        Long id = Typed.number(form.value("patient").strip());
        Patient who = id == null ? null : patients.withAll(id).orElseThrow(NotFoundException::new);
        if (who == null) {
            form.error("patient", "Choose the patient first.");
            return Answers.unprocessable(page(null, null, form));
        }
        CaseFile file = BookForm.caseFile(form, open(who));
        WaitingForm typed = WaitingForm.read(form, accounts.clinicians(), content, LocalDate.now(clock));
        if (form.hasErrors()) {
            return Answers.unprocessable(page(null, who, form));
        }
        WaitingEntry entry = new WaitingEntry(who, file, LocalDate.now(clock), account.displayName());
        typed.fill(entry);
        db.persist(entry);
        audit.record("put on the waiting list", who.id(), file == null ? null : file.id(), null);
        return Answers.seeOther("/diary/waiting");
    }

    private List<CaseFile> open(Patient patient) {
        return cases.ofPatient(patient.id()).stream().filter(CaseFile::open).toList();
    }

    private TemplateInstance page(WaitingEntry entry, Patient patient, Form form) {
        return Templates.waitingEdit(new WaitingView(entry, patient, patient == null ? List.of() : open(patient), form, accounts.clinicians(), content.partOptions()));
    }
}
