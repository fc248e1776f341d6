package org.steadwork.diary;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.steadwork.web.Answers;

/** Reminders of the next visits: looked at, printed, or exported to be sent by other means. */
@Path("/diary/reminders")
@RolesAllowed("staff")
class ReminderPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance reminders(Reminders.Listed listed);
    }

    @Inject
    Reminders reminders;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        return Answers.page(Templates.reminders(reminders.due()));
    }

    @POST
    @Path("/export")
    public Response export() {
        return Response.ok(reminders.export(), "text/csv;charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"reminders-" + LocalDate.now(clock) + ".csv\"").header("Cache-Control", "no-store").build();
    }
}
