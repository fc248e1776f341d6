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
import java.util.List;
import org.steadwork.web.Answers;

/** What is planned and has no time: visits planned in their cases, and reviews that come due. */
@Path("/diary/to-book")
@RolesAllowed("staff")
class ToBookPages {

    @CheckedTemplate(basePath = "diary", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance toBook(List<ToBook> rows, LocalDate today);
    }

    @Inject
    ToBookList list;

    @Inject
    Clock clock;

    @GET
    public Response list() {
        return Answers.page(Templates.toBook(list.all(), LocalDate.now(clock)));
    }
}
