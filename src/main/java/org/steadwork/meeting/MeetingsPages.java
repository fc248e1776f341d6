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
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.web.Answers;

/** The meetings to come and those that were, and the actions that are still open. */
@Path("/meetings")
@RolesAllowed("clinician")
class MeetingsPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance meetings(List<ReviewMeeting> coming, List<Past> past, List<MeetingAction> actions, LocalDate today, boolean plans);
    }

    /** A meeting that is over; {@code minutes} is null when it was called off. */
    record Past(ReviewMeeting meeting, Minutes minutes) {
    }

    @Inject
    Meetings meetings;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    MeetingAccess access;

    @Inject
    CaseAccess cases;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        Map<Long, Minutes> minutes = meetings.closed().stream().collect(Collectors.toMap(Minutes::meetingId, Function.identity()));
        List<Past> past = meetings.past().stream().map(meeting -> new Past(meeting, minutes.get(meeting.id()))).toList();
        return Answers.page(Templates.meetings(meetings.coming(), past, actions(), LocalDate.now(clock), access.plans()));
    }

    /** Those in cases that are open to whoever asks, and what they are to do themselves. */
    private List<MeetingAction> actions() {
        List<MeetingAction> all = outcomes.openActions();
        Set<Long> open = cases.openOf(all.stream().map(action -> action.caseFile().id()).collect(Collectors.toSet()));
        return all.stream().filter(action -> open.contains(action.caseFile().id()) || action.who().id().equals(account.id())).toList();
    }
}
