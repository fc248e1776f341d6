package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;

/** The diary of a day, by clinician or by room, and of a week of one of them. The front desk sees all of it; nothing clinical is on it. */
@Path("/diary")
@RolesAllowed("staff")
class DiaryPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance diary(DiaryView view);
    }

    @Inject
    DiaryViews views;

    @Inject
    Clock clock;

    @GET
    public Response day(@RestQuery String day, @RestQuery String by, @RestQuery String done) {
        return Answers.page(Templates.diary(views.day(day(day), "room".equals(by), number(done))));
    }

    @GET
    @Path("/week")
    public Response week(@RestQuery String day, @RestQuery String whose, @RestQuery String done) {
        return Answers.page(Templates.diary(views.week(day(day), whose, number(done))));
    }

    private LocalDate day(String typed) {
        return day(typed, LocalDate.now(clock));
    }

    /** Reads the day of an address; what is none leads to today. */
    static LocalDate day(String typed, LocalDate today) {
        try {
            return typed == null || typed.isBlank() ? today : Dates.parse(typed);
        } catch (DateTimeException e) {
            return today;
        }
    }

    /** Reads a number of an address; what is none is nothing. */
    static Long number(String typed) {
        return typed != null && typed.matches("\\d{1,15}") ? Long.valueOf(typed) : null;
    }
}
