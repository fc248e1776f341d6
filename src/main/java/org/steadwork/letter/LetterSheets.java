package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.stream.IntStream;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Makes the page of a letter, as a draft on the desk or as it was signed; several resources answer with it. */
@ApplicationScoped
class LetterSheets {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseLetter(CaseHead head, LetterView view, Form form, String note, boolean fresh);

        static native TemplateInstance letterState(LetterView view, boolean fresh);

        static native TemplateInstance signedLetter(CaseHead head, SignedView view, Form form, String note);
    }

    /** What the page of a signed letter shows; {@code typed} is what somebody still wrote on it, which is in no letter. */
    public record SignedView(String path, String title, SignedLetter letter, List<Integer> pages, boolean untouched, List<LetterEvent> events,
                             LetterWithdrawal withdrawal, String consentWithdrawn, String replacedBy, String replacedByPath,
                             List<String> typed) {
    }

    @Inject
    CaseHeads heads;

    @Inject
    Letters letters;

    @Inject
    Consents consents;

    @Inject
    LetterDesk desks;

    @Inject
    LetterContent content;

    @Inject
    CurrentAccount account;

    Letter find(long caseId, int number) {
        return letters.numbered(caseId, number).orElseThrow(NotFoundException::new);
    }

    /** Finds a letter to change it; later callers wait for the running transaction. */
    Letter findForChange(long caseId, int number) {
        return letters.numberedForChange(caseId, number).orElseThrow(NotFoundException::new);
    }

    /** Shows a letter; {@code form} holds what was typed, or is null to show what is stored; {@code note} is said on top, or null. */
    TemplateInstance page(CaseHead head, Letter letter, Form form, String note) {
        return letters.signed(letter).map(signed -> signed(head, letter, signed, form, note)).orElseGet(() -> draft(head, letter, form, note));
    }

    Response unprocessable(Letter letter, Form form) {
        return Answers.unprocessable(page(heads.head(letter.caseFile(), CaseTab.LETTERS), letter, form, null));
    }

    Response conflict(Letter letter, Form form, String note) {
        return Answers.conflict(page(heads.head(letter.caseFile(), CaseTab.LETTERS), letter, form, note));
    }

    /** Shows the parts of a draft's page that change when it is saved while typing. */
    TemplateInstance state(Letter letter) {
        Desk desk = desks.look(letter, account.get());
        return Templates.letterState(LetterView.of(desk, content.matrix(), LetterForm.show(letter, desk.sections())), true);
    }

    /** Says that the consent a letter rested on was withdrawn later; null when it was not. */
    private String consentWithdrawn(Letter letter) {
        return consents.latest(letter.caseFile(), letter.reader()).map(Consent::withdrawnOn).map(Dates::shown).orElse(null);
    }

    private TemplateInstance draft(CaseHead head, Letter letter, Form typed, String note) {
        Desk desk = desks.look(letter, account.get());
        Form form = typed == null ? LetterForm.show(letter, desk.sections()) : typed;
        return Templates.caseLetter(head, LetterView.of(desk, content.matrix(), form), form.with("password", ""), note, false);
    }

    private TemplateInstance signed(CaseHead head, Letter letter, SignedLetter signed, Form typed, String note) {
        SignedView view = new SignedView(LetterView.path(letter), content.title(letter.kind()), signed,
                IntStream.rangeClosed(1, signed.pages()).boxed().toList(), signed.untouched(), letters.events(letter),
                letters.withdrawal(letter).orElse(null), consentWithdrawn(letter), letters.replacing(letter).map(Letter::reference).orElse(null),
                letters.replacing(letter).map(LetterView::path).orElse(null),
                typed == null ? List.of() : LetterForm.typedOtherwise(typed, letter.texts()));
        return Templates.signedLetter(head, view, typed == null ? Form.empty() : typed, note);
    }
}
