package org.steadwork.workplace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.SharedDesk;

/** One desk, several people: settings for each, what to share, who is left out, and cards to stick to the desk. */
@Path("/furniture/{piece: \\d+}/people")
@RolesAllowed("clinician")
class SharedDeskPages {

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance deskPeople(SharedDeskView view);

        static native TemplateInstance deskPeopleCards(SharedDeskView view, boolean sharing, List<DeskCardSheet.Card> cards);
    }

    @Inject
    Register register;

    @Inject
    DeskPeople people;

    @Inject
    DeskDrawing drawing;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show(@RestPath("piece") long id, @Context UriInfo uri) {
        return Answers.page(Templates.deskPeople(view(id, new SharedDeskAsked(uri.getQueryParameters()), "viewed who shares a desk")));
    }

    /** Shows a card for each person counted in, under their marks; nobody is named. */
    @GET
    @Path("/cards")
    @Transactional
    public Response cards(@RestPath("piece") long id, @Context UriInfo uri) {
        SharedDeskAsked asked = new SharedDeskAsked(uri.getQueryParameters());
        SharedDeskView view = view(id, asked, "printed the cards for a shared desk");
        boolean sharing = asked.sharing() && view.several();
        List<DeskCardSheet.Card> cards = new ArrayList<>();
        List<SharedDesk.Place> places = view.workedOut() ? view.places(sharing) : List.of();
        for (int i = 0; i < places.size(); i++) {
            DeskSharer sharer = view.counted().get(i);
            Settings at = places.get(i).settings();
            cards.add(new DeskCardSheet.Card(sharer.mark(), view.desk().name(), Dates.shown(LocalDate.now(clock)), Recommending.rows(at),
                    drawing.card(sharer.recorded(), at, true), sharer.estimated()));
        }
        return Answers.page(Templates.deskPeopleCards(view, sharing, cards));
    }

    private SharedDeskView view(long id, SharedDeskAsked asked, String audited) {
        Furniture desk = register.piece(id).filter(Furniture::desk).orElseThrow(NotFoundException::new);
        SharedDeskView view = people.of(desk, asked);
        view.people().forEach(person -> audit.record(audited, person.patient().id(), person.caseId(), "desk " + id));
        return view;
    }
}
