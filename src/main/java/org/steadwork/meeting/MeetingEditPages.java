package org.steadwork.meeting;

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
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Changing when a meeting is and who takes part, or calling it off. */
@Path("/meetings/{meeting: \\d+}/edit")
@RolesAllowed("clinician")
class MeetingEditPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance editMeeting(ReviewMeeting meeting, Form form, MeetingForm.Offer offer, String shut);
    }

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    MeetingForm forms;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long meeting) {
        ReviewMeeting planned = meetings.whole(meeting);
        return Answers.page(page(planned, MeetingForm.show(planned), desk.shut(planned)));
    }

    @POST
    @Transactional
    public Response save(@RestPath long meeting) {
        ReviewMeeting planned = desk.forChange(meeting);
        Form form = posted.read();
        Optional<String> shut = desk.shut(planned);
        if (shut.isPresent()) {
            return Answers.conflict(page(planned, form, shut));
        }
        if (form.version() != planned.version()) {
            return Answers.conflict(page(planned, form.conflictsWith(MeetingForm.show(planned), planned.version()), shut));
        }
        forms.read(form, planned, LocalDate.now(clock));
        if (form.hasErrors()) {
            return Answers.unprocessable(page(planned, form, shut));
        }
        desk.changed(planned);
        audit.record("changed review meeting", null, null, Dates.shown(planned.heldOn()));
        return Answers.seeOther("/meetings/" + meeting);
    }

    @POST
    @Path("/call-off")
    @Transactional
    public Response callOff(@RestPath long meeting) {
        ReviewMeeting planned = desk.forChange(meeting);
        Form form = posted.read();
        Form page = MeetingForm.show(planned).with("why", form.value("why"));
        Optional<String> shut = desk.shut(planned);
        if (shut.isPresent()) {
            return Answers.conflict(page(planned, page, shut));
        }
        String why = form.requiredText("why", "The reason", 500);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(planned, page.errorsOf(form), shut));
        }
        planned.callOff(account.displayName(), Instant.now(clock), why);
        audit.record("called off review meeting", null, null, Dates.shown(planned.heldOn()));
        return Answers.seeOther("/meetings/" + meeting);
    }

    private TemplateInstance page(ReviewMeeting meeting, Form form, Optional<String> shut) {
        return Templates.editMeeting(meeting, form, forms.offer(), shut.orElse(null));
    }
}
