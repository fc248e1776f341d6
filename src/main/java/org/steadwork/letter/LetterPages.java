package org.steadwork.letter;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One letter: written section by section beside the very pages; once signed, shown and no longer written. */
@Path("/cases/{id: \\d+}/letters/{number: \\d+}")
@RolesAllowed("clinician")
class LetterPages {

    static final String ALREADY_SIGNED = "This letter was signed meanwhile. What is signed stays as it is; a correction is a new letter.";

    @Inject
    CaseHeads heads;

    @Inject
    LetterSheets sheets;

    @Inject
    LetterDesk desks;

    @Inject
    Letters letters;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response letter(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.find(id, number);
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        return Answers.page(sheets.page(head, letter, null, null));
    }

    /** Saves the words; a save while typing gets the changed parts of the page back, any other the page itself. */
    @POST
    @Transactional
    public Response save(@RestPath long id, @RestPath int number, @HeaderParam("HX-Request") boolean whileTyping) {
        Letter letter = sheets.findForChange(id, number);
        Form form = posted.read();
        if (letters.signed(letter).isPresent()) {
            return whole(sheets.conflict(letter, form, ALREADY_SIGNED), whileTyping);
        }
        List<SectionKind> sections = desks.sections(letter);
        Map<String, String> texts = LetterForm.read(form, sections, letter.texts());
        if (form.hasErrors()) {
            return whole(sheets.unprocessable(letter, form), whileTyping);
        }
        // the same words as stored are no conflict: a save while typing may have come just before
        if (!texts.equals(letter.texts())) {
            try {
                letter.requireVersion(form.version());
            } catch (StaleVersionException stale) {
                return whole(sheets.conflict(letter, form.conflictsWith(LetterForm.show(letter, sections), stale.stored()), null), whileTyping);
            }
            letter.write(texts, account.get(), Instant.now(clock));
            letters.flush();
            audit.record("saved letter draft", letter.caseFile().patient().id(), id, letter.reference());
        }
        if (whileTyping) {
            return Answers.page(sheets.state(letter));
        }
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Tells a page that saved while typing to show the whole answer in place of its main part. */
    private static Response whole(Response answer, boolean whileTyping) {
        return !whileTyping ? answer : Response.fromResponse(answer).header("HX-Retarget", "#main").header("HX-Reselect", "#main")
                .header("HX-Reswap", "outerHTML").build();
    }
}
