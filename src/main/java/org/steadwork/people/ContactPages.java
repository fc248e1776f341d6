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

/** The people at an employer whom the clinic speaks with. */
@Path("/employers/{employer: \\d+}/contacts")
@RolesAllowed("staff")
class ContactPages {

    @Inject
    Employers employers;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    @Path("/new")
    public Response add(@RestPath("employer") long id) {
        return Answers.page(EmployerPages.Templates.contactEdit(find(id), null, Form.empty()));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted(@RestPath("employer") long id) {
        Employer employer = find(id);
        Form form = posted.read();
        EmployerContact made = new EmployerContact(employer);
        fill(made, form);
        if (form.hasErrors()) {
            return Answers.unprocessable(EmployerPages.Templates.contactEdit(employer, null, form));
        }
        employers.keep(made);
        return kept("added employer contact", id);
    }

    @GET
    @Path("/{contact: \\d+}")
    public Response edit(@RestPath("employer") long id, @RestPath("contact") long contactId) {
        EmployerContact contact = find(id, contactId);
        return Answers.page(EmployerPages.Templates.contactEdit(find(id), contact, shown(contact)));
    }

    @POST
    @Path("/{contact: \\d+}")
    @Transactional
    public Response editPosted(@RestPath("employer") long id, @RestPath("contact") long contactId) {
        Employer employer = find(id);
        EmployerContact contact = find(id, contactId);
        Form form = posted.read();
        EmployerContact typed = new EmployerContact(employer);
        fill(typed, form);
        if (form.hasErrors()) {
            return Answers.unprocessable(EmployerPages.Templates.contactEdit(employer, contact, form));
        }
        try {
            contact.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(EmployerPages.Templates.contactEdit(employer, contact, form.conflictsWith(shown(contact), stale.stored())));
        }
        contact.is(typed.name(), typed.role(), typed.phone(), typed.email());
        return kept("changed employer contact", id);
    }

    @POST
    @Path("/{contact: \\d+}/retire")
    @Transactional
    public Response retire(@RestPath("employer") long id, @RestPath("contact") long contactId) {
        find(id, contactId).retire(LocalDate.now(clock));
        return kept("retired employer contact", id);
    }

    @POST
    @Path("/{contact: \\d+}/bring-back")
    @Transactional
    public Response bringBack(@RestPath("employer") long id, @RestPath("contact") long contactId) {
        find(id, contactId).bringBack();
        return kept("brought employer contact back", id);
    }

    private static void fill(EmployerContact contact, Form form) {
        contact.is(form.requiredText("name", "Name", 120), form.text("role", 120), form.text("phone", 40), ContactFields.email(form));
    }

    private static Form shown(EmployerContact c) {
        return Form.empty().with("version", c.version()).with("name", c.name()).with("role", c.role()).with("phone", c.phone()).with("email", c.email());
    }

    private Response kept(String act, long id) {
        audit.record(act, null, null, "employer " + id);
        return Answers.seeOther("/employers/" + id);
    }

    private Employer find(long id) {
        return employers.findByIdOptional(id).orElseThrow(NotFoundException::new);
    }

    private EmployerContact find(long id, long contactId) {
        return employers.contact(id, contactId).orElseThrow(NotFoundException::new);
    }
}
