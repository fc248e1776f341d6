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
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One meeting: its agenda while it is open, its minutes once it is closed. */
@Path("/meetings/{meeting: \\d+}")
@RolesAllowed("clinician")
class MeetingPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance agenda(Agenda agenda, Form form, LocalDate today);

        static native TemplateInstance closedMeeting(ReviewMeeting meeting, Minutes minutes, List<MinutesAddendum> addenda, List<MeetingAction> actions,
                LocalDate today, Form form);
    }

    private static final int LONGEST_ADDENDUM = 8000;

    @Inject
    Meetings meetings;

    @Inject
    AgendaSheet sheet;

    @Inject
    CaseOutcomes outcomes;

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
        ReviewMeeting one = meetings.whole(meeting);
        Optional<Minutes> minutes = meetings.minutes(meeting);
        if (minutes.isPresent() || one.calledOff()) {
            audit.record("viewed minutes of review meeting", null, null, Dates.shown(one.heldOn()));
            return Answers.page(closed(one, minutes.orElse(null), Form.empty()));
        }
        audit.record("viewed agenda of review meeting", null, null, Dates.shown(one.heldOn()));
        return Answers.page(sheet.page(one, null));
    }

    /** A correction of closed minutes: it is added under them, they stay as they are. */
    @POST
    @Path("/addenda")
    @Transactional
    public Response add(@RestPath long meeting) {
        ReviewMeeting one = meetings.whole(meeting);
        Form form = posted.read();
        Optional<Minutes> minutes = meetings.minutes(meeting);
        if (minutes.isEmpty()) {
            return Answers.conflict(sheet.page(one, sheet.refused(form, "words", "The meeting is open: write it in the meeting. An addendum stands under"
                    + " closed minutes. You typed: " + form.value("words"))));
        }
        String words = form.requiredText("words", "The addendum", LONGEST_ADDENDUM);
        if (form.hasErrors()) {
            return Answers.unprocessable(closed(one, minutes.get(), form));
        }
        meetings.add(new MinutesAddendum(minutes.get(), words, account.displayName(), Instant.now(clock)));
        audit.record("added to minutes of review meeting", null, null, Dates.shown(one.heldOn()));
        return Answers.seeOther("/meetings/" + meeting + "#addenda");
    }

    private TemplateInstance closed(ReviewMeeting meeting, Minutes minutes, Form form) {
        return Templates.closedMeeting(meeting, minutes, meetings.addenda(meeting.id()), outcomes.actionsOf(meeting.id()), LocalDate.now(clock), form);
    }
}
