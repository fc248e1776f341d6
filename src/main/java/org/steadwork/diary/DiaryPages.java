package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;

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
        return Answers.page(Templates.diary(views.day(day(day), "room".equals(by), Typed.number(done))));
    }

    @GET
    @Path("/week")
    public Response week(@RestQuery String day, @RestQuery String whose, @RestQuery String done) {
        return Answers.page(Templates.diary(views.week(day(day), whose, Typed.number(done))));
    }

    private LocalDate day(String typed) {
        return Typed.day(typed, LocalDate.now(clock));
    }
}
