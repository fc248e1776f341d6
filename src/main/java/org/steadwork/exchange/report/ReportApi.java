package org.steadwork.exchange.report;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.ApiProblem;

/** Figures and pseudonymous rows for a program that bears a token. It reads and never writes. */
@Path(ReportApi.FOLDER)
class ReportApi {

    static final String FOLDER = "/api/report";
    static final int LARGEST_PAGE = 1000;
    static final int USUAL_PAGE = 200;
    private static final int LAST_PAGE = 1_000_000;

    @Inject
    SecurityIdentity bearer;

    @Inject
    ReportRows rows;

    @Inject
    ReportFigures figures;

    @Inject
    RateBook rates;

    @Inject
    AuditTrail audit;

    @GET
    @Path("/cases")
    @RolesAllowed(Scope.CASES_READ)
    @Transactional
    public Response cases(@RestQuery String page, @RestQuery String size, @RestQuery String format) {
        Response tooMany = tooMany();
        if (tooMany != null) {
            return tooMany;
        }
        Integer number = number(page, 1, LAST_PAGE);
        Integer many = number(size, USUAL_PAGE, LARGEST_PAGE);
        boolean csv = "csv".equals(format);
        if (number == null || many == null || !csv && format != null && !format.isEmpty() && !"json".equals(format)) {
            return ApiProblem.of(422, "Not a page", "page is a whole number from 1 to " + LAST_PAGE + ", size from 1 to " + LARGEST_PAGE + ", format is json or csv.").answer();
        }
        var found = rows.page(number, many, new Pseudonyms(bearer.getAttribute(ReportTokens.PSEUDONYM_KEY)));
        audit.record("read cases for reporting", null, null, found.size() + " rows, page " + number);
        Response.ResponseBuilder answer = csv ? Response.ok(ReportDocument.csv(found), "text/csv;charset=utf-8").header("X-Total", rows.count())
                : Response.ok(ReportDocument.json(found, number, many, rows.count()), "application/json");
        return answer.header("Cache-Control", "no-store").build();
    }

    @GET
    @Path("/figures")
    @RolesAllowed(Scope.FIGURES_READ)
    @Transactional
    public Response figures() {
        Response tooMany = tooMany();
        if (tooMany != null) {
            return tooMany;
        }
        audit.record("read figures for reporting", null, null, null);
        return Response.ok(figures.document(), "application/json").header("Cache-Control", "no-store").build();
    }

    /** Returns the refusal when this token asked too often within a minute, else null. */
    private Response tooMany() {
        long seconds = rates.secondsToWait(bearer.<Long>getAttribute(ReportTokens.TOKEN_ID));
        return seconds == 0 ? null : Response.fromResponse(ApiProblem.of(429, "Too many requests", "At most " + RateBook.MOST_A_MINUTE
                + " a minute for each token. Try again in " + seconds + " s.").answer()).header("Retry-After", seconds).build();
    }

    private static Integer number(String written, int otherwise, int most) {
        if (written == null || written.isEmpty()) {
            return otherwise;
        }
        return written.matches("\\d{1,7}") && Integer.parseInt(written) >= 1 && Integer.parseInt(written) <= most ? Integer.valueOf(written) : null;
    }
}
