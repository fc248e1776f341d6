package org.steadwork.workplace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.people.Employers;
import org.steadwork.people.Site;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;

/** A site with its rooms, desks and chairs; who sits where is for clinicians. */
@Path("/sites/{site: \\d+}")
@RolesAllowed("staff")
class SitePages {

    @CheckedTemplate(basePath = "workplace", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance site(SiteView view);

        static native TemplateInstance roomEdit(Site site, Room room, Form form);

        static native TemplateInstance furniture(FurnitureView view);

        static native TemplateInstance furnitureEdit(FurnitureFields fields);
    }

    @Inject
    Employers employers;

    @Inject
    Register register;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    /** Takes as many queries for a large site as for an empty one. */
    @GET
    public Response show(@RestPath("site") long id) {
        Site site = employers.site(id).orElseThrow(NotFoundException::new);
        List<Room> rooms = register.rooms(id);
        List<Furniture> pieces = register.at(id);
        List<Long> numbers = pieces.stream().map(Furniture::id).toList();
        Map<Long, Map<String, FurnitureSize>> sizes = register.sizes(numbers);
        Map<Long, Sitter> last = new HashMap<>();
        if (account.clinician()) {
            register.sitters(numbers).forEach(sitter -> last.putIfAbsent(sitter.piece(), sitter));
            audit.record("viewed who sits where", null, null, "site " + id);
        }
        return Answers.page(Templates.site(new SiteView(site, rooms.stream().map(room -> new SiteView.RoomView(room, pieces.stream()
                .filter(piece -> piece.room().id().equals(room.id()))
                .map(piece -> FurnitureRow.of(piece, sizes.getOrDefault(piece.id(), Map.of()), last.get(piece.id()))).toList())).toList(),
                account.clinician())));
    }
}
