package org.steadwork.workplace;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Employers;
import org.steadwork.people.Site;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Adding and changing the rooms of a site, and adding desks and chairs to a room. */
@Path("/sites/{site: \\d+}/rooms")
@RolesAllowed("staff")
class RoomPages {

    @Inject
    Employers employers;

    @Inject
    Register register;

    @Inject
    RegisterContent content;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    @Path("/new")
    public Response add(@RestPath("site") long siteId) {
        return Answers.page(SitePages.Templates.roomEdit(site(siteId), null, Form.empty()));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response addPosted(@RestPath("site") long siteId) {
        Site site = site(siteId);
        Form form = posted.read();
        String name = name(form, site, null);
        String note = form.text("note", 500);
        if (form.hasErrors()) {
            return Answers.unprocessable(SitePages.Templates.roomEdit(site, null, form));
        }
        Room room = new Room(site, name);
        room.isCalled(name, note);
        register.add(room);
        return kept("added room", siteId);
    }

    @GET
    @Path("/{room: \\d+}")
    public Response edit(@RestPath("site") long siteId, @RestPath("room") long roomId) {
        Room room = room(siteId, roomId);
        return Answers.page(SitePages.Templates.roomEdit(room.site(), room, shown(room)));
    }

    @POST
    @Path("/{room: \\d+}")
    @Transactional
    public Response editPosted(@RestPath("site") long siteId, @RestPath("room") long roomId) {
        Room room = room(siteId, roomId);
        Form form = posted.read();
        String name = name(form, room.site(), roomId);
        String note = form.text("note", 500);
        if (form.hasErrors()) {
            return Answers.unprocessable(SitePages.Templates.roomEdit(room.site(), room, form));
        }
        try {
            room.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(SitePages.Templates.roomEdit(room.site(), room, form.conflictsWith(shown(room), stale.stored())));
        }
        room.isCalled(name, note);
        return kept("changed room", siteId);
    }

    @POST
    @Path("/{room: \\d+}/retire")
    @Transactional
    public Response retire(@RestPath("site") long siteId, @RestPath("room") long roomId) {
        room(siteId, roomId).retire(LocalDate.now(clock));
        return kept("retired room", siteId);
    }

    @POST
    @Path("/{room: \\d+}/bring-back")
    @Transactional
    public Response bringBack(@RestPath("site") long siteId, @RestPath("room") long roomId) {
        room(siteId, roomId).bringBack();
        return kept("brought room back", siteId);
    }

    @GET
    @Path("/{room: \\d+}/furniture")
    public Response addPiece(@RestPath("site") long siteId, @RestPath("room") long roomId, @RestQuery String kind) {
        FurnitureKind asked = "chair".equals(kind) ? FurnitureKind.CHAIR : FurnitureKind.DESK;
        return Answers.page(SitePages.Templates.furnitureEdit(fields(FurnitureForm.fresh(asked, LocalDate.now(clock)), room(siteId, roomId), asked)));
    }

    @POST
    @Path("/{room: \\d+}/furniture")
    @Transactional
    public Response addPiecePosted(@RestPath("site") long siteId, @RestPath("room") long roomId) {
        Room room = room(siteId, roomId);
        Form form = posted.read();
        FurnitureKind kind = form.is("kind", "chair") ? FurnitureKind.CHAIR : FurnitureKind.DESK;
        FurnitureForm typed = FurnitureForm.read(form, content.of(kind), LocalDate.now(clock));
        if (typed.name() != null && register.nameTaken(room, kind, typed.name(), null)) {
            form.error("name", "This room has a " + kind.label() + " of this name already.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(SitePages.Templates.furnitureEdit(fields(form, room, kind)));
        }
        Furniture piece = new Furniture(room, kind, typed.name());
        piece.is(typed.name(), typed.standsOnIt(), typed.note());
        register.add(piece);
        register.record(piece, typed.sizes(), typed.how(), typed.knownOn());
        audit.record("added " + kind.label() + " to the register", null, null, kind.label() + " " + piece.id());
        return Answers.seeOther("/furniture/" + piece.id());
    }

    private FurnitureFields fields(Form form, Room room, FurnitureKind kind) {
        return FurnitureFields.of(form, room, null, kind, "/sites/" + room.site().id() + "/rooms/" + room.id() + "/furniture", content.of(kind), Map.of());
    }

    private String name(Form form, Site site, Long except) {
        String name = form.requiredText("name", "Name", 120);
        if (name != null && register.roomNameTaken(site, name, except)) {
            form.error("name", "This site has a room of this name already.");
        }
        return name;
    }

    private static Form shown(Room room) {
        return Form.empty().with("version", room.version()).with("name", room.name()).with("note", room.note());
    }

    private Response kept(String act, long siteId) {
        audit.record(act, null, null, "site " + siteId);
        return Answers.seeOther("/sites/" + siteId);
    }

    private Site site(long id) {
        return employers.site(id).orElseThrow(NotFoundException::new);
    }

    private Room room(long siteId, long roomId) {
        return register.room(siteId, roomId).orElseThrow(NotFoundException::new);
    }
}
