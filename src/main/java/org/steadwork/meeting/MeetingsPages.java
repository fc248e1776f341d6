package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.web.Answers;

/** The meetings to come and those that were, and the actions that are still open. */
@Path("/meetings")
@RolesAllowed("clinician")
class MeetingsPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance meetings(List<ReviewMeeting> coming, List<Past> past, List<MeetingAction> actions, LocalDate today);
    }

    /** A meeting that is over; {@code minutes} is null when it was called off. */
    record Past(ReviewMeeting meeting, Minutes minutes) {
    }

    @Inject
    Meetings meetings;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        Map<Long, Minutes> minutes = meetings.closed().stream().collect(Collectors.toMap(Minutes::meetingId, Function.identity()));
        List<Past> past = meetings.past().stream().map(meeting -> new Past(meeting, minutes.get(meeting.id()))).toList();
        return Answers.page(Templates.meetings(meetings.coming(), past, outcomes.openActions(), LocalDate.now(clock)));
    }
}
