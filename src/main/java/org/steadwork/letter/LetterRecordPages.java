package org.steadwork.letter;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.Ground;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Recording what happened with a letter: shown to the worker, an override, sent, no longer to be relied on. */
@Path("/cases/{id: \\d+}/letters/{number: \\d+}/record")
@RolesAllowed("clinician")
class LetterRecordPages {

    @Inject
    LetterSheets sheets;

    @Inject
    Letters letters;

    @Inject
    LetterDesk desks;

    @Inject
    Consents consents;

    @Inject
    LetterContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** The worker saw the draft, or need not see it, and answered. */
    @POST
    @Path("/shown")
    @Transactional
    public Response shown(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.findForChange(id, number);
        Form form = posted.read();
        if (letters.signed(letter).isPresent()) {
            return sheets.conflict(letter, form, LetterPages.ALREADY_SIGNED);
        }
        if (form.version() != letter.version()) {
            return sheets.conflict(letter, merged(letter, form), "The letter was saved after it was shown. The answer belongs to the words the worker saw:"
                    + " look at what changed, and show it again if it matters.");
        }
        LetterEvent.Kind answer = form.requiredChoice("answer", "The worker’s answer", LetterEvent.Kind.class);
        if (answer != null && answer.afterSigning()) {
            form.error("answer", "The worker’s answer: choose one of the answers offered.");
        }
        return event(letter, form, answer, null, "recorded the worker’s answer");
    }

    /** The signed letter left, or the worker got a copy. The gate is looked at once more: it counts on the day of sending. */
    @POST
    @Path("/sent")
    @Transactional
    public Response sent(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.find(id, number);
        Form form = posted.read();
        LetterEvent.Kind what = form.requiredChoice("answer", "What happened", LetterEvent.Kind.class);
        if (letters.signed(letter).isEmpty() || what != null && !what.afterSigning()) {
            form.error("answer", "Only a signed letter is sent.");
        }
        LocalDate day = form.date("happenedOn", "Day");
        if (what == LetterEvent.Kind.SENT && day != null) {
            requireOpenGate(letter, day, form);
        }
        if (what == LetterEvent.Kind.ANSWERED && letters.events(letter).stream().noneMatch(event -> event.kind() == LetterEvent.Kind.SENT)) {
            form.error("answer", "No sending is recorded that this could be the answer to.");
        }
        LocalDate replyBy = form.date("replyBy", "Answer hoped for by");
        if (replyBy != null && day != null && replyBy.isBefore(day)) {
            form.error("replyBy", "The answer cannot be hoped for before the letter left. You entered " + Dates.shown(replyBy) + ".");
        }
        return event(letter, form, what, what == LetterEvent.Kind.SENT ? replyBy : null, "recorded what became of letter");
    }

    /** Begins a second letter that puts a signed one right; once signed it takes the place of the first. */
    @POST
    @Path("/replaced")
    @Transactional
    public Response replaced(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.findForChange(id, number);
        if (letters.signed(letter).isEmpty()) {
            return sheets.conflict(letter, merged(letter, posted.read()), "A draft is put right where it is; a second letter is for a signed one.");
        }
        Letter second = letters.replacing(letter).orElseGet(() -> desks.beginInPlaceOf(letter, account.get()));
        audit.record("drafted letter in place of another", letter.caseFile().patient().id(), id, second.reference() + " for " + letter.reference());
        return Answers.seeOther(LetterView.path(second));
    }

    private void requireOpenGate(Letter letter, LocalDate day, Form form) {
        LetterKind kind = content.kind(letter.kind());
        boolean open = kind.gate() == LetterKind.GateRule.NONE || !letter.reader().kind().needsConsent() || letters.override(letter).isPresent()
                || consents.latest(letter.caseFile(), letter.reader()).map(consent -> consent.given().on(day))
                        .filter(gate -> gate == Gate.IN_FORCE).isPresent();
        if (!open) {
            form.error("happenedOn", "On " + Dates.shown(day) + " no consent to write to this reader was in force. If it has gone out, "
                    + "tell the worker and the lead of the clinic; it cannot be recorded as a proper sending.");
        }
        if (letters.withdrawal(letter).isPresent()) {
            form.error("answer", "This letter is marked as not to be relied on, and is not sent.");
        }
    }

    private Response event(Letter letter, Form form, LetterEvent.Kind kind, LocalDate replyBy, String action) {
        LocalDate today = LocalDate.now(clock);
        LocalDate day = form.requiredDate("happenedOn", "Day");
        if (day != null && (day.isAfter(today) || day.isBefore(letter.caseFile().openedOn()))) {
            form.error("happenedOn", "The day lies between the opening of the case and today. You entered " + Dates.shown(day) + ".");
        }
        String how = form.requiredText("how", "How", 200);
        String note = form.text("note", 2000);
        if (form.hasErrors()) {
            return sheets.unprocessable(letter, merged(letter, form));
        }
        letters.add(new LetterEvent(letter, kind, day, how, note, account.get(), Instant.now(clock)).answerBy(replyBy));
        audit.record(action, letter.caseFile().patient().id(), letter.caseFile().id(), letter.reference());
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Acting without consent, where the kind of letter allows it. */
    @POST
    @Path("/override")
    @Transactional
    public Response override(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.findForChange(id, number);
        Form form = posted.read();
        if (content.kind(letter.kind()).gate() != LetterKind.GateRule.CONSENT_OR_OVERRIDE || letters.override(letter).isPresent()
                || letters.signed(letter).isPresent()) {
            return sheets.conflict(letter, merged(letter, form), "An override cannot be recorded for this letter, or one is on record already.");
        }
        Ground ground = form.requiredChoice("ground", "Ground", Ground.class);
        DisclosureOverride.Words words = new DisclosureOverride.Words(form.requiredText("decidedBy", "Who decided", 200),
                form.requiredText("groundText", "The ground in words", 2000), form.requiredText("what", "What goes to whom", 2000),
                form.requiredText("whyNoConsent", "Why consent was not possible or not asked", 2000),
                form.requiredText("workerTold", "Whether the worker was told", 1000));
        if (form.hasErrors()) {
            return sheets.unprocessable(letter, merged(letter, form));
        }
        letters.add(new DisclosureOverride(letter, ground, words, account.get(), Instant.now(clock)));
        letters.flush();
        audit.record("recorded disclosure override", letter.caseFile().patient().id(), id, letter.reference() + ", " + ground.name());
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Says that a signed letter should no longer be relied on. */
    @POST
    @Path("/withdrawn")
    @Transactional
    public Response withdrawn(@RestPath long id, @RestPath int number) {
        Letter letter = sheets.findForChange(id, number);
        Form form = posted.read();
        SignedLetter signed = letters.signed(letter).orElse(null);
        if (signed == null || letters.withdrawal(letter).isPresent()) {
            return sheets.conflict(letter, merged(letter, form), "Only a signed letter is withdrawn, and only once." + typed(form, "reason"));
        }
        String reason = form.requiredText("reason", "Reason", 1000);
        if (form.hasErrors()) {
            return sheets.unprocessable(letter, form);
        }
        letters.add(new LetterWithdrawal(signed, account.get(), Instant.now(clock), reason));
        letters.flush();
        audit.record("withdrew letter", letter.caseFile().patient().id(), id, letter.reference());
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Says again what was typed into a field that the page no longer has; all of it, should the field have been sent more than once. */
    private static String typed(Form form, String field) {
        String words = form.values(field).stream().map(String::strip).filter(value -> !value.isEmpty()).collect(Collectors.joining(" / "));
        return words.isEmpty() ? "" : " You typed as " + field + ": " + words;
    }

    /** Puts the stored words beside what was typed into another form of the page, so that the editor is not shown empty. */
    private Form merged(Letter letter, Form form) {
        LetterForm.fill(letter, content.kind(letter.kind()).sections(), form);
        return form;
    }
}
