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
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** A desk or chair of the register: its sizes, changing it, taking it out of use and back, and who was assessed there. */
@Path("/furniture/{piece: \\d+}")
@RolesAllowed("staff")
class FurniturePages {

    @Inject
    Register register;

    @Inject
    RegisterContent content;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath("piece") long id) {
        Furniture piece = find(id);
        Map<String, FurnitureSize> stored = register.sizes(piece);
        List<FurnitureView.SizeRow> rows = content.of(piece.kind()).stream().map(size -> row(size, stored.get(size.key()))).toList();
        List<Sitter> sitters = List.of();
        if (account.clinician()) {
            sitters = register.sitters(List.of(id));
            audit.record("viewed who sits where", null, null, piece.kind().label() + " " + id);
        }
        return Answers.page(SitePages.Templates.furniture(new FurnitureView(piece, rows, account.clinician(), sitters)));
    }

    private static FurnitureView.SizeRow row(RegisterSize size, FurnitureSize stored) {
        return stored == null ? new FurnitureView.SizeRow(size.label(), "–", null)
                : new FurnitureView.SizeRow(size.label(), Numerals.mm(stored.amount().doubleValue()), stored.how().label() + ", " + Dates.shown(stored.knownOn()));
    }

    @GET
    @Path("/edit")
    public Response edit(@RestPath("piece") long id) {
        Furniture piece = find(id);
        Map<String, FurnitureSize> stored = register.sizes(piece);
        return Answers.page(SitePages.Templates.furnitureEdit(fields(FurnitureForm.show(piece, stored, LocalDate.now(clock)), piece, stored)));
    }

    @POST
    @Path("/edit")
    @Transactional
    public Response editPosted(@RestPath("piece") long id) {
        Furniture piece = find(id);
        Map<String, FurnitureSize> stored = register.sizes(piece);
        Form form = posted.read();
        FurnitureForm typed = FurnitureForm.read(form, content.of(piece.kind()), LocalDate.now(clock));
        if (typed.name() != null && register.nameTaken(piece.room(), piece.kind(), typed.name(), id)) {
            form.error("name", "This room has a " + piece.kind().label() + " of this name already.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(SitePages.Templates.furnitureEdit(fields(form, piece, stored)));
        }
        try {
            piece.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            Form now = FurnitureForm.show(piece, stored, LocalDate.now(clock)).with("how", form.value("how")).with("knownOn", form.value("knownOn"));
            return Answers.conflict(SitePages.Templates.furnitureEdit(fields(form.conflictsWith(now, stale.stored()), piece, stored)));
        }
        piece.is(typed.name(), typed.standsOnIt(), typed.note());
        register.record(piece, typed.sizes(), typed.how(), typed.knownOn());
        audit.record("changed " + piece.kind().label() + " in the register", null, null, piece.kind().label() + " " + id);
        return Answers.seeOther("/furniture/" + id);
    }

    @POST
    @Path("/retire")
    @Transactional
    public Response retire(@RestPath("piece") long id) {
        Furniture piece = find(id);
        piece.retire(LocalDate.now(clock));
        audit.record("retired " + piece.kind().label(), null, null, piece.kind().label() + " " + id);
        return Answers.seeOther("/furniture/" + id);
    }

    @POST
    @Path("/bring-back")
    @Transactional
    public Response bringBack(@RestPath("piece") long id) {
        Furniture piece = find(id);
        piece.bringBack();
        audit.record("brought " + piece.kind().label() + " back", null, null, piece.kind().label() + " " + id);
        return Answers.seeOther("/furniture/" + id);
    }

    private FurnitureFields fields(Form form, Furniture piece, Map<String, FurnitureSize> stored) {
        return FurnitureFields.of(form, piece.room(), piece, piece.kind(), "/furniture/" + piece.id() + "/edit", content.of(piece.kind()), stored);
    }

    private Furniture find(long id) {
        return register.piece(id).orElseThrow(NotFoundException::new);
    }
}
