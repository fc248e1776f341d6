package org.steadwork.ownpage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.steadwork.web.Answers;

/** Where a phone comes to that was not let in or whose time is over. */
@Path("/own")
@PermitAll
class OwnClosedPages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance closed();
    }

    @Inject
    OwnLinks links;

    @Inject
    OwnGuest guest;

    @GET
    public Response closed() {
        return Answers.page(Templates.closed());
    }

    @POST
    @Transactional
    public Response leave() {
        guest.token().ifPresent(links::leave);
        return Response.seeOther(URI.create("/own")).cookie(guest.noCookie()).build();
    }
}
