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

/** What is planned and has no time: visits planned in their cases, and reviews that come due. */
@Path("/diary/to-book")
@RolesAllowed("staff")
class ToBookPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance toBook(ToBookList.Part part, LocalDate today);
    }

    @Inject
    ToBookList list;

    @Inject
    Clock clock;

    /** A page that is not there is the nearest one that is. */
    @GET
    public Response list(@RestQuery String page) {
        int asked = page != null && page.matches("\\d{1,6}") ? Integer.parseInt(page) : 1;
        return Answers.page(Templates.toBook(list.part(asked), LocalDate.now(clock)));
    }
}
