package org.steadwork.caseload;

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
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.people.Employer;
import org.steadwork.people.Employers;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;

/** The half-years of an employer: which reports are signed, which can be counted. */
@Path("/employers/{employer: \\d+}/group-report")
@RolesAllowed("clinician")
class GroupReportListPages {

    private static final int PERIODS = 10;

    /** One half-year; {@code listed} null where no draft was saved. */
    record Row(ReportPeriod period, GroupReports.Listed listed) {

        public boolean signed() {
            return listed != null && listed.signedAt() != null;
        }
    }

    @CheckedTemplate(basePath = "caseload", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance groupReports(Employer employer, ReportPeriod running, List<Row> rows);

        static native TemplateInstance groupReport(GroupReportView view, Form form);
    }

    @Inject
    Employers employers;

    @Inject
    GroupReports reports;

    @Inject
    Clock clock;

    @GET
    public Response list(@RestPath("employer") long id) {
        Employer employer = employers.findByIdOptional(id).orElseThrow(NotFoundException::new);
        Map<String, GroupReports.Listed> listed = reports.listed(employer);
        LocalDate today = LocalDate.now(clock);
        return Answers.page(Templates.groupReports(employer, ReportPeriod.around(today),
                ReportPeriod.endedBefore(today, PERIODS).stream().map(period -> new Row(period, listed.get(period.key()))).toList()));
    }
}
