package org.steadwork.letter;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.CurrentAccount;
import org.steadwork.account.PasswordAsked;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Signing a letter. What is signed is what was seen: words that differ from the stored draft are not signed. */
@Path("/cases/{id: \\d+}/letters/{number: \\d+}/sign")
@RolesAllowed("clinician")
class LetterSignPages {

    @Inject
    LetterSheets sheets;

    @Inject
    LetterDesk desks;

    @Inject
    Letters letters;

    @Inject
    Signing signing;

    @Inject
    CurrentAccount account;

    @Inject
    PasswordAsked password;

    @Inject
    PostedForm posted;

    @POST
    public Response sign(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.find(id, number);
        Form form = posted.read();
        if (letters.signed(letter).isPresent()) {
            return sheets.conflict(letter, form, LetterPages.ALREADY_SIGNED);
        }
        Account signer = account.get();
        Desk desk = desks.look(letter, signer);
        Map<String, String> typed = LetterForm.read(form, desk.sections(), letter.texts());
        Form stored = LetterForm.show(letter, desk.sections());
        try {
            letter.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return sheets.conflict(letter, form.conflictsWith(stored, stale.stored()), null);
        }
        Map<String, String> confirmed = problems(form, desk, typed, signer);
        if (form.hasErrors()) {
            return sheets.unprocessable(letter, form);
        }
        try {
            signing.sign(id, number, form.version(), signer, confirmed);
        } catch (StaleVersionException | PersistenceException meanwhile) {
            letters.forget();
            Letter now = sheets.find(id, number);
            return letters.signed(now).isPresent() ? sheets.conflict(now, form, LetterPages.ALREADY_SIGNED)
                    : sheets.conflict(now, form.conflictsWith(LetterForm.show(now, desks.sections(now)), now.version()), null);
        }
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Notes what stands in the way, and returns the signer's answers to the checks that ask. */
    private Map<String, String> problems(Form form, Desk desk, Map<String, String> typed, Account signer) {
        List<SectionKind> changed = desk.sections().stream().filter(section -> !typed.getOrDefault(section.key(), "")
                .equals(desk.letter().texts().getOrDefault(section.key(), ""))).toList();
        changed.forEach(section -> form.error(LetterForm.field(section),
                "“" + section.heading() + "” differs from the saved draft. Save it, look at the page, then sign."));
        desk.checks().stream().filter(Check::stops).forEach(check -> form.error("check-" + check.key(), check.text() + "."));
        Map<String, String> confirmed = new LinkedHashMap<>();
        for (Check check : desk.asked()) {
            String why = form.text(check.question(), 500);
            if (why == null) {
                form.error(check.question(), "Say why the words stay, or change them: " + check.text() + ".");
            } else {
                confirmed.put(check.key(), why);
            }
        }
        password.check(form, "password", signer);
        return confirmed;
    }
}
