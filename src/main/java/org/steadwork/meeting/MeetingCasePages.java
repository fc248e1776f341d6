package org.steadwork.meeting;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** A case on one page for the meeting: the one question, the facts, what was said. */
@Path("/meetings/{meeting: \\d+}/cases/{caseFile: \\d+}")
@RolesAllowed("clinician")
class MeetingCasePages {

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    CaseSheet sheet;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response show(@RestPath long meeting, @RestPath long caseFile, @RestQuery String back) {
        ReviewMeeting open = meetings.whole(meeting);
        CaseFile file = desk.file(caseFile);
        if (desk.shut(open).isPresent()) {
            return Answers.seeOther("/meetings/" + meeting);
        }
        audit.record("viewed case in review meeting", file.patient().id(), caseFile, null);
        return sheet.answer(200, open, file, null, CaseOutcomeForm.back(back));
    }

    /** The question, and what was said. */
    @POST
    @Transactional
    public Response write(@RestPath long meeting, @RestPath long caseFile) {
        ReviewMeeting open = desk.forChange(meeting);
        CaseFile file = desk.file(caseFile);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        String question = form.text("question", AgendaCase.LONGEST_QUESTION);
        String notes = form.text("minutes", AgendaCase.LONGEST_NOTES);
        if (form.hasErrors()) {
            return sheet.answer(422, open, file, form, CaseOutcomeForm.back(form.value("back")));
        }
        AgendaCase stored = meetings.caseOf(meeting, caseFile).orElse(null);
        int version = stored == null ? 0 : stored.version() + 1;
        if (form.version() != version) {
            form.conflictsWith(CaseOutcomeForm.show(stored, Form.empty()), version);
            return sheet.answer(409, open, file, form, CaseOutcomeForm.back(form.value("back")));
        }
        AgendaCase item = desk.touch(open, file);
        item.ask(question);
        item.note(notes);
        return done(open, file, "wrote on case in review meeting", form);
    }

    /** The guests left the room for this case, or came back. */
    @POST
    @Path("/guests")
    @Transactional
    public Response guests(@RestPath long meeting, @RestPath long caseFile) {
        ReviewMeeting open = desk.forChange(meeting);
        CaseFile file = desk.file(caseFile);
        Form form = posted.read();
        Optional<Response> shut = Shut.answer(desk, open, form);
        if (shut.isPresent()) {
            return shut.get();
        }
        boolean left = form.is("left", "yes");
        desk.touch(open, file).guestsLeft(left);
        return done(open, file, left ? "noted that guests left for case in review meeting" : "noted that guests hear case in review meeting", form);
    }

    private Response done(ReviewMeeting meeting, CaseFile file, String action, Form form) {
        desk.changed(meeting);
        audit.record(action, file.patient().id(), file.id(), null);
        return Answers.seeOther("/meetings/" + meeting.id() + (CaseOutcomeForm.back(form.value("back")).isEmpty() ? "/cases/" : "/show/") + file.id());
    }
}
