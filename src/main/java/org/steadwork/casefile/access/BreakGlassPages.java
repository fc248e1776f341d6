package org.steadwork.casefile.access;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Opening a case from outside its care team: with a reason, for some hours, seen by the lead. */
@Path("/cases/{id: \\d+}/break-glass")
@RolesAllowed("clinician")
class BreakGlassPages {

    private static final int SHORTEST_REASON = 10;
    private static final int LONGEST_REASON = 400;
    private static final int LONGEST_IN_TRAIL = 400;

    @Inject
    CaseFiles cases;

    @Inject
    CaseAccess access;

    @Inject
    CareTeams teams;

    @Inject
    CurrentAccount current;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response ask(@RestPath long id) {
        CaseFile file = find(id);
        return access.opens(id) ? Answers.seeOther("/cases/" + id) : Answers.page(BreakGlassPage.of(file));
    }

    @POST
    @Transactional
    public Response open(@RestPath long id) {
        CaseFile file = find(id);
        if (access.opens(id)) {
            return Answers.seeOther("/cases/" + id);
        }
        Form form = posted.read();
        String reason = form.requiredText("reason", "The reason", LONGEST_REASON);
        if (reason != null && reason.length() < SHORTEST_REASON) {
            form.error("reason", "Say in a few words why you need this case now, at least " + SHORTEST_REASON + " characters.");
        }
        if (BreakGlassPage.HOURS.stream().noneMatch(one -> one.value().equals(form.value("hours")))) {
            form.error("hours", "For how long: choose one of the answers offered.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(BreakGlassPage.of(file, form));
        }
        int hours = Integer.parseInt(form.value("hours"));
        teams.open(file, current.get(), reason, hours);
        audit.record("opened a case by break-glass", file.patient().id(), id, shortened(hours + " h: " + reason));
        return Answers.seeOther("/cases/" + id);
    }

    private static String shortened(String text) {
        return text.length() > LONGEST_IN_TRAIL ? text.substring(0, LONGEST_IN_TRAIL - 1) + "…" : text;
    }

    private CaseFile find(long id) {
        return cases.withPeople(id).orElseThrow(NotFoundException::new);
    }
}
