package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.CurrentAccount;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.Answers;

/** How each kind of letter looks in this clinic's words and under its letterhead, on an invented case. */
@Path("/clinic/letters")
@RolesAllowed("lead")
class ClinicLetterPages {

    private static final int SCREEN_DPI = 110;

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinicLetters(List<LetterKind> kinds, LetterKind shown, String folder);
    }

    @Inject
    LetterContent content;

    @Inject
    SampleLetters samples;

    @Inject
    CurrentAccount account;

    @GET
    public Response all() {
        return page(content.kinds().iterator().next());
    }

    @GET
    @Path("/{kind: [a-z_]+}")
    public Response one(@RestPath String kind) {
        return page(content.kind(kind));
    }

    private Response page(LetterKind shown) {
        return Answers.page(Templates.clinicLetters(List.copyOf(content.kinds()), shown, "letters"));
    }

    @GET
    @Path("/{kind: [a-z_]+}/page-{page: \\d+}.png")
    public Response picture(@RestPath String kind, @RestPath int page) {
        try {
            return Response.ok(PrintedPages.png(samples.print(content.kind(kind), account.get()).bytes(), page, SCREEN_DPI), "image/png")
                    .header("Cache-Control", "no-store").build();
        } catch (IllegalArgumentException e) {
            throw new NotFoundException(e);
        }
    }
}
