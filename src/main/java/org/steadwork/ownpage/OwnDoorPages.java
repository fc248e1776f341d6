package org.steadwork.ownpage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The door of the patient's own page: the private link, and the date of birth. Every link that does not open is answered alike. */
@Path("/own/{token: [A-Za-z0-9_-]+}")
@PermitAll
class OwnDoorPages {

    @CheckedTemplate(basePath = "ownpage", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance door(String token, Form form);
    }

    @Inject
    OwnLinks links;

    @Inject
    OwnGuest guest;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response door(@RestPath String token) {
        links.alive(token).orElseThrow(NotFoundException::new);
        return Answers.page(Templates.door(token, Form.empty()));
    }

    /** A date that cannot be read is no try. */
    @POST
    @Transactional
    public Response open(@RestPath String token) {
        OwnLink link = links.aliveForTry(token).orElseThrow(NotFoundException::new);
        Form form = posted.read();
        LocalDate born = form.requiredDate("born", "Your date of birth");
        if (born == null) {
            return Answers.unprocessable(Templates.door(token, form));
        }
        if (link.opens(born, Instant.now(clock))) {
            audit.record("opened the own page", link.caseFile().patient().id(), link.caseFile().id(), "through the private link");
            return Response.seeOther(URI.create("/own/today")).cookie(guest.cookie(links.letIn(link))).build();
        }
        audit.record("was refused at the own page", link.caseFile().patient().id(), link.caseFile().id(), "wrong date of birth");
        form.error("born", "This is not the date we have. After " + OwnLink.TRIES + " wrong dates the link no longer opens.");
        return Answers.unprocessable(Templates.door(token, form));
    }
}
