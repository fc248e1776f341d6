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
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Planning a meeting. */
@Path("/meetings/new")
@RolesAllowed("clinician")
class MeetingPlanPages {

    /** Practice meets every one or two weeks. */
    private static final int USUAL_WEEKS = 2;

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance planMeeting(Form form, MeetingForm.Offer offer);
    }

    @Inject
    Meetings meetings;

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
    public Response plan() {
        MeetingForm.Offer offer = forms.offer();
        Form form = Form.empty().with("heldOn", Dates.shown(LocalDate.now(clock).plusWeeks(USUAL_WEEKS))).with("startsAt", "12:30").with("chair", account.id())
                .withAll("who", offer.accounts().stream().filter(one -> one.role().grants().contains("clinician")).map(Account::id).map(String::valueOf).toList());
        return Answers.page(Templates.planMeeting(form, offer));
    }

    @POST
    @Transactional
    public Response add() {
        Form form = posted.read();
        ReviewMeeting meeting = new ReviewMeeting(account.displayName(), Instant.now(clock));
        forms.read(form, meeting, LocalDate.now(clock));
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.planMeeting(form, forms.offer()));
        }
        meetings.persist(meeting);
        audit.record("planned review meeting", null, null, Dates.shown(meeting.heldOn()));
        return Answers.seeOther("/meetings/" + meeting.id());
    }
}
