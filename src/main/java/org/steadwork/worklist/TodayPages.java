package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;

/** Today: who needs me now, and why. */
@Path("/")
@RolesAllowed("staff")
class TodayPages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance today(String day, LocalDate on, DayVisits.Shown visits, Newcomers.Shown newcomers, Worklist worklist);
    }

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final String CHOICE = "steadwork-today";
    private static final int A_YEAR = 365 * 24 * 3600;

    @Inject
    Worklists worklists;

    @Inject
    DayVisits visits;

    @Inject
    Newcomers newcomers;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /**
     * @param all {@code all} for every visit of the day, else the first of many
     * @param kept whose entries this browser asked for last, so that Today opens as it was left
     */
    @GET
    public Response today(@RestQuery String who, @RestQuery String rule, @RestQuery("case") String caseId, @RestQuery String page, @RestQuery("visits") String all,
            @CookieParam(CHOICE) String kept) {
        LocalDate today = LocalDate.now(clock);
        int most = Whose.ALL.equals(all) ? Integer.MAX_VALUE : DayVisits.FIRST;
        if (!account.clinician()) {
            return Answers.page(Templates.today(DAY.format(today), today, visits.on(today, Whose.everybody(), most), newcomers.on(today), Worklist.hidden()));
        }
        Long ofCase = number(caseId);
        // one case is asked for wholly, whoever treats it
        Whose whose = Whose.of(who != null ? who : ofCase != null ? Whose.ALL : kept, account.id());
        Long asked = number(page);
        Filter filter = new Filter(whose, rule == null || !rule.matches("[a-z_]{1,60}") ? "" : rule, ofCase, asked == null || asked < 1 ? 1 : (int) Math.min(asked, 1_000_000));
        Response answer = Answers.page(Templates.today(DAY.format(today), today, visits.on(today, whose, most), newcomers.on(today), worklists.on(today, filter)));
        return who == null ? answer : Response.fromResponse(answer).cookie(new NewCookie.Builder(CHOICE).value(whose.value()).path("/").maxAge(A_YEAR).httpOnly(true)
                .sameSite(NewCookie.SameSite.STRICT).build()).build();
    }

    private static Long number(String text) {
        return text != null && text.matches("\\d{1,15}") ? Long.valueOf(text) : null;
    }
}
