package org.steadwork.caseload;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;

/** How the clinic is doing: figures of the chosen cases on four pages, and each table as a file. */
@Path("/caseload")
@RolesAllowed("clinician")
class CaseloadPages {

    @CheckedTemplate(basePath = "caseload", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseload(CaseloadView view, Form form);

        static native TemplateInstance definitions(Definitions definitions);
    }

    @Inject
    Caseload caseload;

    @Inject
    Definitions definitions;

    @Inject
    AuditTrail audit;

    @Context
    UriInfo address;

    @GET
    public Response outcomes() {
        return page(CaseloadTab.OUTCOMES);
    }

    @GET
    @Path("/time")
    public Response time() {
        return page(CaseloadTab.TIME);
    }

    @GET
    @Path("/work-place")
    public Response workPlace() {
        return page(CaseloadTab.WORK_PLACE);
    }

    @GET
    @Path("/quality")
    public Response quality() {
        return page(CaseloadTab.QUALITY);
    }

    @GET
    @Path("/definitions")
    public Response definitions() {
        return Answers.page(Templates.definitions(definitions));
    }

    @GET
    @Path("/{table: [a-z_]+}.csv")
    public Response file(@RestPath String table) {
        CaseloadTab tab = CaseloadTab.of(table).orElseThrow(NotFoundException::new);
        CaseloadView view = caseload.view(tab, asked(), true);
        if (view.form().hasErrors()) {
            return Answers.unprocessable(Templates.caseload(view, view.form()));
        }
        FigureTable found = view.sections().stream().map(Section::table).filter(one -> one != null && one.key().equals(table)).findFirst()
                .orElseGet(() -> FigureTable.nothing(table));
        audit.record("took caseload table", null, null, table);
        return Response.ok(CsvFile.of(found, SelectionForm.words(view.form(), view.offers())), "text/csv; charset=utf-8").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"caseload-" + table.replace('_', '-') + ".csv\"").build();
    }

    private Response page(CaseloadTab tab) {
        CaseloadView view = caseload.view(tab, asked(), false);
        TemplateInstance page = Templates.caseload(view, view.form());
        return view.form().hasErrors() ? Answers.unprocessable(page) : Answers.page(page);
    }

    private Form asked() {
        return Form.of(new MultivaluedHashMap<>(address.getQueryParameters()));
    }
}
