package org.steadwork.review;

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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkHistory;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** What happened in a case: its visits with their notes, its work statuses, and the next visit. */
@Path("/cases/{id: \\d+}/visits")
@RolesAllowed("clinician")
class VisitsPages {

    @CheckedTemplate(basePath = "review", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance visits(CaseHead head, VisitsView view);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    WorkStatuses statuses;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response visits(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.VISITS);
        return Answers.page(Templates.visits(head, view(head.file(), form())));
    }

    @POST
    @Transactional
    public Response add(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate day = ReviewForm.visitDay(form, file);
        VisitKind kind = form.requiredChoice("kind", "Kind of visit", VisitKind.class);
        if (!file.open()) {
            form.error("visitedOn", "The case is closed. Open it again before planning a visit.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.visits(heads.head(file, CaseTab.VISITS), view(file, form)));
        }
        Visit visit = visits.add(file, day, kind, Attendance.PLANNED);
        audit.record("planned visit", file.patient().id(), id, "visit " + visit.number());
        return day.isAfter(LocalDate.now(clock)) ? Answers.seeOther(CaseTab.VISITS.href(id))
                : Answers.seeOther(CaseTab.VISITS.href(id) + "/" + visit.number());
    }

    private Form form() {
        return Form.empty().with("visitedOn", Dates.shown(LocalDate.now(clock))).with("kind", "follow_up");
    }

    private VisitsView view(CaseFile file, Form form) {
        Map<Integer, VisitNote> byVisit = notes.ofCase(file.id());
        List<Addendum> addenda = notes.addendaOfCase(file.id());
        List<VisitsView.Row> rows = new ArrayList<>();
        for (Visit visit : visits.of(file.id())) {
            VisitNote note = byVisit.get(visit.number());
            List<Addendum> own = note == null ? List.of() : addenda.stream().filter(a -> a.note().id().equals(note.id())).toList();
            rows.add(0, new VisitsView.Row(visit, note, own, note != null && note.signed() && SignedNotes.late(note)));
        }
        WorkHistory history = statuses.of(file.id());
        List<VisitsView.Spell> spells = new ArrayList<>();
        LocalDate next = null;
        for (WorkStatus status : history.newestFirst()) {
            spells.add(new VisitsView.Spell(status, next));
            next = status.from();
        }
        return new VisitsView(form, rows, spells, history.daysOff(LocalDate.now(clock)));
    }
}
