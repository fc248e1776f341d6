package org.steadwork.people;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Finding and adding employers; the assistant may do both. */
@Path("/employers")
@RolesAllowed("staff")
class EmployerPages {

    @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance employers(String q, List<EmployerRow> found);

        static native TemplateInstance employer(Employer employer, List<EmployerContact> contacts, List<SiteRow> sites);

        static native TemplateInstance employerEdit(Employer employer, Form form);

        static native TemplateInstance contactEdit(Employer employer, EmployerContact contact, Form form);

        static native TemplateInstance siteEdit(Employer employer, Site site, Form form);
    }

    @Inject
    Employers employers;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response list(@RestQuery String q) {
        return Answers.page(Templates.employers(q == null ? "" : q, employers.search(q)));
    }

    @GET
    @Path("/new")
    public Response add() {
        return Answers.page(Templates.employerEdit(null, Form.empty()));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted() {
        Form form = posted.read();
        EmployerForm typed = EmployerForm.read(form, employers, null);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.employerEdit(null, form));
        }
        Employer made = new Employer(typed.name());
        typed.fill(made);
        employers.persistAndFlush(made);
        audit.record("added employer", null, null, "employer " + made.id());
        return Answers.seeOther("/employers/" + made.id());
    }
}
