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
import java.time.LocalDate;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Closing a meeting: the minutes as they would be kept, then kept as they are. */
@Path("/meetings/{meeting: \\d+}/close")
@RolesAllowed("clinician")
class ClosePages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance closeMeeting(ReviewMeeting meeting, MinutesText minutes, long notDiscussed, Form form);
    }

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    MinutesWriter writer;

    @Inject
    Closing closing;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long meeting) {
        ReviewMeeting open = meetings.whole(meeting);
        return desk.shut(open).isPresent() ? Answers.seeOther("/meetings/" + meeting) : Answers.page(page(open, Form.empty().with("version", open.version())));
    }

    @POST
    @Transactional
    public Response close(@RestPath long meeting) {
        ReviewMeeting open = desk.forChange(meeting);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        if (form.version() != open.version()) {
            form.error("version", "Something was written in the meeting after these minutes were shown. Look at them as they are now, then close.");
            return Answers.conflict(page(open, form.with("version", open.version())));
        }
        if (open.heldOn().isAfter(LocalDate.now(clock))) {
            form.error("version", "The meeting is on a day to come. Close it when it was held, or call it off.");
            return Answers.unprocessable(page(open, form));
        }
        closing.close(open);
        return Answers.seeOther("/meetings/" + meeting);
    }

    private TemplateInstance page(ReviewMeeting meeting, Form form) {
        MinutesText minutes = writer.draft(meeting);
        return Templates.closeMeeting(meeting, minutes, minutes.parts().stream().filter(part -> part.lines().stream()
                .anyMatch(line -> line.words().equals("not discussed"))).count(), form);
    }
}
