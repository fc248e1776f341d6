package org.steadwork.review;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.enterprise.event.Event;
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
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitChanged;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Patient;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Whether the patient came, for the front desk: no clinical detail stands on this page. */
@Path("/cases/{id: \\d+}/attendance")
@RolesAllowed("staff")
class AttendancePages {

    @CheckedTemplate(basePath = "review", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance attendance(Patient patient, long caseId, List<Visit> visits, List<Option> states, Form form);
    }

    @Inject
    CaseHeads heads;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    AuditTrail audit;

    @Inject
    Event<VisitChanged> changed;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response attendance(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("viewed attendance", file.patient().id(), id, null);
        return Answers.page(page(file, Form.empty()));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        return form.has("number") ? change(file, form) : plan(file, form);
    }

    private Response change(CaseFile file, Form form) {
        Integer number = form.integer("number", "Visit", 1, 9_999);
        Visit visit = number == null ? null : visits.numbered(file.id(), number).orElseThrow(NotFoundException::new);
        Attendance attendance = form.requiredChoice("attendance", "Attendance", Attendance.class);
        if (visit != null && attendance == Attendance.ATTENDED && visit.visitedOn().isAfter(LocalDate.now(clock))) {
            form.error("attendance", "A visit on " + Dates.shown(visit.visitedOn()) + " has not taken place yet.");
        }
        if (visit != null && notes.of(visit).filter(VisitNote::signed).isPresent()) {
            form.error("attendance", "The note of this visit is signed; its attendance stays as it is.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        try {
            visit.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(file, form.conflictsWith(Form.empty(), stale.stored())));
        }
        visit.attended(attendance);
        changed.fire(new VisitChanged(visit));
        audit.record("set attendance", file.patient().id(), file.id(), "visit " + visit.number());
        return Answers.seeOther("/cases/" + file.id() + "/attendance");
    }

    private Response plan(CaseFile file, Form form) {
        LocalDate day = ReviewForm.visitDay(form, file);
        if (!file.open()) {
            form.error("visitedOn", "The case is closed.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form));
        }
        Visit visit = visits.add(file, day, VisitKind.FOLLOW_UP, Attendance.PLANNED);
        audit.record("planned visit", file.patient().id(), file.id(), "visit " + visit.number());
        return Answers.seeOther("/cases/" + file.id() + "/attendance");
    }

    private TemplateInstance page(CaseFile file, Form form) {
        return Templates.attendance(file.patient(), file.id(), visits.of(file.id()), Option.of(Attendance.class, Attendance::label), form);
    }
}
