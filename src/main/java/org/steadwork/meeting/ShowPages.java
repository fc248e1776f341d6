package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;

/** The full-screen view: one case a screen, moved by arrow keys or links. */
@Path("/meetings/{meeting: \\d+}/show")
@RolesAllowed("clinician")
class ShowPages {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance showCase(CaseSheet.View view);
    }

    @Inject
    Meetings meetings;

    @Inject
    MeetingDesk desk;

    @Inject
    Agendas agendas;

    @Inject
    CaseSheet sheet;

    @Inject
    AuditTrail audit;

    /** Goes on where the meeting stands: at the first case nobody wrote about. */
    @GET
    public Response begin(@RestPath long meeting) {
        ReviewMeeting open = meetings.whole(meeting);
        if (desk.shut(open).isPresent()) {
            return Answers.seeOther("/meetings/" + meeting);
        }
        Agenda agenda = agendas.of(open);
        return agenda.rows().stream().filter(row -> !row.discussed()).findFirst().or(() -> agenda.rows().stream().findFirst())
                .map(row -> Answers.seeOther("/meetings/" + meeting + "/show/" + row.file().id())).orElseGet(() -> Answers.seeOther("/meetings/" + meeting));
    }

    @GET
    @Path("/{caseFile: \\d+}")
    public Response show(@RestPath long meeting, @RestPath long caseFile) {
        ReviewMeeting open = meetings.whole(meeting);
        CaseFile file = desk.file(caseFile);
        if (desk.shut(open).isPresent()) {
            return Answers.seeOther("/meetings/" + meeting);
        }
        audit.record("viewed case in review meeting", file.patient().id(), caseFile, null);
        return sheet.view(open, file, "").map(view -> Answers.page(Templates.showCase(view))).orElseGet(() -> Answers.seeOther("/meetings/" + meeting));
    }
}
