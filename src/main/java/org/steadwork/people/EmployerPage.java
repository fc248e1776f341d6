package org.steadwork.people;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One employer: its contacts and sites, changing it, and taking it out of use and back. */
@Path("/employers/{employer: \\d+}")
@RolesAllowed("staff")
class EmployerPage {

    @Inject
    Employers employers;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath("employer") long id) {
        return Answers.page(EmployerPages.Templates.employer(find(id), employers.contacts(id), employers.sites(id)));
    }

    @GET
    @Path("/edit")
    public Response edit(@RestPath("employer") long id) {
        Employer employer = find(id);
        return Answers.page(EmployerPages.Templates.employerEdit(employer, EmployerForm.show(employer)));
    }

    @POST
    @Path("/edit")
    @Transactional
    public Response editPosted(@RestPath("employer") long id) {
        Employer employer = find(id);
        Form form = posted.read();
        EmployerForm typed = EmployerForm.read(form, employers, employer);
        if (form.hasErrors()) {
            return Answers.unprocessable(EmployerPages.Templates.employerEdit(employer, form));
        }
        try {
            employer.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(EmployerPages.Templates.employerEdit(employer, form.conflictsWith(EmployerForm.show(employer), stale.stored())));
        }
        typed.fill(employer);
        audit.record("changed employer", null, null, "employer " + id);
        return Answers.seeOther("/employers/" + id);
    }

    @POST
    @Path("/retire")
    @Transactional
    public Response retire(@RestPath("employer") long id) {
        find(id).retire(LocalDate.now(clock));
        audit.record("retired employer", null, null, "employer " + id);
        return Answers.seeOther("/employers/" + id);
    }

    @POST
    @Path("/bring-back")
    @Transactional
    public Response bringBack(@RestPath("employer") long id) {
        find(id).bringBack();
        audit.record("brought employer back", null, null, "employer " + id);
        return Answers.seeOther("/employers/" + id);
    }

    private Employer find(long id) {
        return employers.findByIdOptional(id).orElseThrow(NotFoundException::new);
    }
}
