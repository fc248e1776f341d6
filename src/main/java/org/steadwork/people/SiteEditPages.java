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

/** Adding and changing the sites of an employer; what stands at a site is the register's. */
@Path("/employers/{employer: \\d+}/sites")
@RolesAllowed("staff")
class SiteEditPages {

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
        return Answers.page(EmployerPages.Templates.siteEdit(find(id), null, Form.empty()));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted(@RestPath("employer") long id) {
        Employer employer = find(id);
        Form form = posted.read();
        String name = name(form, employer, null);
        String address = form.text("address", 400);
        if (form.hasErrors()) {
            return Answers.unprocessable(EmployerPages.Templates.siteEdit(employer, null, form));
        }
        Site made = new Site(employer, name);
        made.standsAt(name, address);
        employers.keep(made);
        audit.record("added site", null, null, "employer " + id);
        return Answers.seeOther("/sites/" + made.id());
    }

    @GET
    @Path("/{site: \\d+}")
    public Response edit(@RestPath("employer") long id, @RestPath("site") long siteId) {
        Site site = find(id, siteId);
        return Answers.page(EmployerPages.Templates.siteEdit(site.employer(), site, shown(site)));
    }

    @POST
    @Path("/{site: \\d+}")
    @Transactional
    public Response editPosted(@RestPath("employer") long id, @RestPath("site") long siteId) {
        Site site = find(id, siteId);
        Form form = posted.read();
        String name = name(form, site.employer(), siteId);
        String address = form.text("address", 400);
        if (form.hasErrors()) {
            return Answers.unprocessable(EmployerPages.Templates.siteEdit(site.employer(), site, form));
        }
        try {
            site.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(EmployerPages.Templates.siteEdit(site.employer(), site, form.conflictsWith(shown(site), stale.stored())));
        }
        site.standsAt(name, address);
        audit.record("changed site", null, null, "site " + siteId);
        return Answers.seeOther("/sites/" + siteId);
    }

    @POST
    @Path("/{site: \\d+}/retire")
    @Transactional
    public Response retire(@RestPath("employer") long id, @RestPath("site") long siteId) {
        find(id, siteId).retire(LocalDate.now(clock));
        audit.record("retired site", null, null, "site " + siteId);
        return Answers.seeOther("/employers/" + id);
    }

    @POST
    @Path("/{site: \\d+}/bring-back")
    @Transactional
    public Response bringBack(@RestPath("employer") long id, @RestPath("site") long siteId) {
        find(id, siteId).bringBack();
        audit.record("brought site back", null, null, "site " + siteId);
        return Answers.seeOther("/employers/" + id);
    }

    private String name(Form form, Employer employer, Long except) {
        String name = form.requiredText("name", "Name", 120);
        if (name != null && employers.siteNameTaken(employer, name, except)) {
            form.error("name", "This employer has a site of this name already.");
        }
        return name;
    }

    private static Form shown(Site site) {
        return Form.empty().with("version", site.version()).with("name", site.name()).with("address", site.address());
    }

    private Employer find(long id) {
        return employers.findByIdOptional(id).orElseThrow(NotFoundException::new);
    }

    private Site find(long id, long siteId) {
        return employers.site(siteId).filter(site -> site.employer().id().equals(id)).orElseThrow(NotFoundException::new);
    }
}
