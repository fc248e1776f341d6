package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Leave of a clinician, and days on which the whole clinic is closed. What is booked in it stays, and is listed to be moved. */
@Path("/diary/clinic/leave")
@RolesAllowed("lead")
class LeavePages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance leave(Leave leave, Form form, List<Option> who);
    }

    @Inject
    Accounts accounts;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @GET
    @Path("/new")
    public Response add() {
        return Answers.page(page(null, Form.empty().with("who", LeaveForm.CLINIC)));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted() {
        Form form = posted.read();
        LeaveForm typed = LeaveForm.read(form, accounts.clinicians());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(null, form));
        }
        db.persist(new Leave(typed.account(), typed.first(), typed.last(), typed.part(), typed.words()));
        audit.record("entered leave", null, null, typed.words());
        return Answers.seeOther("/diary/clinic");
    }

    @GET
    @Path("/{leave: \\d+}")
    public Response edit(@RestPath long leave) {
        Leave one = find(leave);
        return Answers.page(page(one, LeaveForm.show(one)));
    }

    @POST
    @Path("/{leave: \\d+}")
    @Transactional
    public Response save(@RestPath long leave) {
        Leave one = find(leave);
        Form form = posted.read();
        LeaveForm typed = LeaveForm.read(form, accounts.clinicians());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(one, form));
        }
        try {
            one.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(one, form.conflictsWith(LeaveForm.show(one), stale.stored())));
        }
        one.take(typed.account(), typed.first(), typed.last(), typed.part(), typed.words());
        audit.record("changed leave", null, null, typed.words());
        return Answers.seeOther("/diary/clinic");
    }

    @POST
    @Path("/{leave: \\d+}/remove")
    @Transactional
    public Response remove(@RestPath long leave) {
        Leave one = find(leave);
        Form form = posted.read();
        try {
            one.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(one, form.conflictsWith(LeaveForm.show(one), stale.stored())));
        }
        db.remove(one);
        audit.record("removed leave", null, null, one.words());
        return Answers.seeOther("/diary/clinic");
    }

    private Leave find(long id) {
        Leave leave = db.find(Leave.class, id);
        if (leave == null) {
            throw new NotFoundException();
        }
        return leave;
    }

    private TemplateInstance page(Leave leave, Form form) {
        List<Option> who = new ArrayList<>(List.of(new Option(LeaveForm.CLINIC, "The whole clinic")));
        accounts.clinicians().forEach(one -> who.add(new Option(one.id().toString(), one.displayName())));
        return Templates.leave(leave, form, who);
    }
}
