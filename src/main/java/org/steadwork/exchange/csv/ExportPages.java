package org.steadwork.exchange.csv;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;

/** Taking lists out as CSV; the columns are those that an import reads. */
@Path("/clinic/export")
@RolesAllowed("lead")
class ExportPages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance export(long patients, long employers, long scores);
    }

    @Inject
    CsvExports exports;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response choose() {
        return Answers.page(Templates.export(exports.countPatients(), exports.countEmployers(), exports.countScores()));
    }

    /** @param bom anything but {@code no} puts the byte order mark first */
    @GET
    @Path("/{list}.csv")
    public Response file(@RestPath String list, @RestQuery String bom) {
        boolean mark = !"no".equals(bom);
        byte[] file = switch (list) {
            case "patients" -> exports.patients(mark);
            case "employers" -> exports.employers(mark);
            case "scores" -> exports.scores(mark);
            default -> throw new NotFoundException();
        };
        audit.record("took out a list", null, null, list);
        return Response.ok(file, "text/csv;charset=utf-8").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"" + list + "-" + LocalDate.now(clock) + ".csv\"").build();
    }
}
