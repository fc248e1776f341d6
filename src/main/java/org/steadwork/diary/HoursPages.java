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
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.diary.rules.Span;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The working week of a clinician, set by the lead. */
@Path("/diary/clinic/hours/{clinician: \\d+}")
@RolesAllowed("lead")
class HoursPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance hours(Account clinician, boolean own, List<Weekday> days, Form form);
    }

    record Weekday(String field, String name) {
    }

    private static final int NOT_STORED = 0;

    @Inject
    Availability availability;

    @Inject
    Accounts accounts;

    @Inject
    DiaryContent content;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    EntityManager db;

    @GET
    public Response hours(@RestPath long clinician) {
        Account account = find(clinician);
        WorkingWeek week = availability.week(clinician).orElse(null);
        return Answers.page(page(account, week, shown(week)));
    }

    @POST
    @Transactional
    public Response save(@RestPath long clinician) {
        Account account = find(clinician);
        WorkingWeek week = availability.week(clinician).orElse(null);
        Form form = posted.read();
        Map<DayOfWeek, List<Span>> typed = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            try {
                List<Span> spans = WeekColumn.read(form.text(field(day), 100));
                if (!spans.isEmpty()) {
                    typed.put(day, spans);
                }
            } catch (IllegalArgumentException e) {
                form.error(field(day), "Hours of " + DiaryWords.day(day) + " must look like 9:00-12:30, 13:30-17:00, in steps of " + DiaryContent.GRID
                        + " minutes and without overlap; empty for no visits.");
            }
        }
        if (!form.hasErrors() && typed.isEmpty() && !form.fields().contains(field(DayOfWeek.MONDAY))) {
            form.error(field(DayOfWeek.MONDAY), "No hours were sent.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(account, week, form));
        }
        int stored = week == null ? NOT_STORED : week.version() + 1;
        try {
            StaleVersionException.check(form.version(), stored);
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(account, week, form.conflictsWith(shown(week), stored)));
        }
        if (week == null) {
            db.persist(new WorkingWeek(account, typed));
        } else {
            week.work(typed);
        }
        audit.record("set working hours", null, null, account.displayName());
        return Answers.seeOther("/diary/clinic");
    }

    private Account find(long id) {
        return accounts.clinicians().stream().filter(one -> one.id() == id).findFirst().orElseThrow(NotFoundException::new);
    }

    private Form shown(WorkingWeek week) {
        Form form = Form.empty().with("version", week == null ? NOT_STORED : week.version() + 1);
        Map<DayOfWeek, List<Span>> spans = week == null ? content.usualWeek() : week.spans();
        for (DayOfWeek day : DayOfWeek.values()) {
            form.with(field(day), WeekColumn.shown(spans.getOrDefault(day, List.of())));
        }
        return form;
    }

    private static TemplateInstance page(Account account, WorkingWeek week, Form form) {
        return Templates.hours(account, week != null, Arrays.stream(DayOfWeek.values()).map(day -> new Weekday(field(day), DiaryWords.day(day))).toList(), form);
    }

    private static String field(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }
}
