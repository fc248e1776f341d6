package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Booking a visit: whom, what, with whom, where, when. What was typed stays, whoever else has the time by then. */
@Path("/diary/book")
@RolesAllowed("staff")
class BookPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance book(BookView view);

        static native TemplateInstance book$hits(BookView view);
    }

    @Inject
    BookViews views;

    @Inject
    BookingDesk desk;

    @Inject
    Patients patients;

    @Inject
    DiaryContent content;

    @Inject
    PostedForm posted;

    @GET
    public Response open(@RestQuery String q, @Context UriInfo address, @HeaderParam("HX-Request") String htmx) {
        Form form = Form.empty();
        for (String field : new String[] {"patient", "caseId", "visit", "waiting", "kind", "clinician", "room", "day", "start", "minutes"}) {
            String value = address.getQueryParameters().getFirst(field);
            if (value != null) {
                form.with(field, value);
            }
        }
        Patient patient = patient(form);
        BookView view = views.of(patient == null ? form : views.opened(form, patient), patient, q);
        if (htmx != null && patient == null) {
            return Response.fromResponse(Answers.page(Templates.book$hits(view))).header("Vary", "HX-Request").build();
        }
        return Answers.page(Templates.book(view));
    }

    /** Each try to book is a transaction of its own, so that this one holds none. */
    @POST
    public Response book() {
        Form form = posted.read();
        Patient patient = patient(form);
        if (patient == null) {
            form.error("q", "Choose the patient first.");
            return Answers.unprocessable(Templates.book(views.of(form, null, null)));
        }
        CaseFile file = BookForm.caseFile(form, views.openCases(patient));
        VisitKind kind = form.requiredChoice("kind", "Kind of visit", VisitKind.class);
        if (file == null && form.error("caseId") == null && kind != null && kind != VisitKind.INITIAL) {
            form.error("kind", "This patient has no open case. Only a first visit can be booked; a clinician opens the case then.");
        }
        BookForm.When when = BookForm.when(form, kind, content);
        if (form.hasErrors() || !when.complete()) {
            return Answers.unprocessable(Templates.book(views.of(form, patient, null)));
        }
        Wish wish = new Wish(patient.id(), file == null ? null : file.id(), Typed.number(form.value("visit")), Typed.number(form.value("waiting")),
                kind, when.minutes(), when.clinicianId(), when.room(), when.day(), when.start());
        try {
            long id = desk.book(wish);
            return Answers.seeOther("/diary?day=" + when.day() + "&done=" + id + "#a-" + id);
        } catch (Refused refused) {
            form.error(refused.field(), refused.getMessage());
            TemplateInstance page = Templates.book(views.of(form, patient, null));
            return refused.taken() ? Answers.conflict(page) : Answers.unprocessable(page);
        }
    }

    private Patient patient(Form form) {
        Long id = Typed.number(form.value("patient").strip());
        if (id == null) {
            return null;
        }
        return patients.withAll(id).orElseThrow(NotFoundException::new);
    }
}
