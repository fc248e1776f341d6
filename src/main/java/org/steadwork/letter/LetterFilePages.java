package org.steadwork.letter;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.BrokenRecordException;

/** The pages of a letter as pictures, and the signed file itself. */
@Path("/cases/{id: \\d+}/letters/{number: \\d+}/file")
@RolesAllowed("clinician")
class LetterFilePages {

    private static final int SCREEN_DPI = 110;

    @Inject
    LetterSheets sheets;

    @Inject
    Letters letters;

    @Inject
    LetterDesk desks;

    @Inject
    LetterPrinter printer;

    @Inject
    LetterContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @GET
    @Path("/page-{page: \\d+}.png")
    public Response page(@RestPath long id, @RestPath int number, @RestPath int page) {
        Letter letter = sheets.find(id, number);
        byte[] file = letters.signed(letter).map(this::whole)
                .orElseGet(() -> printer.draft(letter, content.kind(letter.kind()), desks.sections(letter), account.get()).bytes());
        try {
            return Response.ok(PrintedPages.png(file, page, SCREEN_DPI), "image/png").header("Cache-Control", "no-store").build();
        } catch (IllegalArgumentException e) {
            throw new NotFoundException(e);
        }
    }

    @GET
    @Path("/letter.pdf")
    public Response download(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.find(id, number);
        byte[] file = whole(letters.signed(letter).orElseThrow(NotFoundException::new));
        audit.record("downloaded letter", letter.caseFile().patient().id(), id, letter.reference());
        // the name of a file is a disclosure too: the reference, and not the person
        return Response.ok(file, "application/pdf").header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"letter-" + letter.reference().replace('/', '-') + ".pdf\"").build();
    }

    /** Returns the signed file, and refuses to hand out one that no longer has its fingerprint. */
    private byte[] whole(SignedLetter signed) {
        if (!signed.untouched()) {
            throw new BrokenRecordException("The stored file of letter " + signed.reference() + " is not the one that was signed",
                    "Its fingerprint differs, so it must not be relied on. Ask whoever it was sent to for the copy they have.");
        }
        return signed.pdf();
    }
}
