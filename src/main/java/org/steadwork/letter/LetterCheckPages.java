package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.account.AuditTrail;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedFile;
import org.steadwork.web.PostedForm;

/** Says of a PDF, or of its fingerprint, whether and when it was signed here. The file is looked at and not kept. */
@Path("/letters/check")
@RolesAllowed("clinician")
class LetterCheckPages {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance letterCheck(Form form, Verdict verdict, Letter letter);
    }

    @Inject
    LetterVerification verification;

    @Inject
    Letters letters;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response ask() {
        return Answers.page(Templates.letterCheck(Form.empty(), null, null));
    }

    @POST
    public Response check() {
        Form form = posted.read();
        Optional<PostedFile> file = posted.file("file", LetterVerification.LARGEST_BYTES);
        String fingerprint = file.map(sent -> LetterPdf.sha256(sent.bytes())).orElseGet(() -> typed(form));
        if (file.isPresent() && file.get().bytes().length > LetterVerification.LARGEST_BYTES) {
            form.error("file", "No letter signed here is larger than " + LetterVerification.LARGEST_BYTES / 1_000_000 + " MB, so this one was not.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.letterCheck(form, null, null));
        }
        Verdict verdict = verification.of(fingerprint);
        Letter letter = verdict.signed().flatMap(signed -> letters.find(signed.letterId())).orElse(null);
        audit.record("checked a letter", letter == null ? null : letter.caseFile().patient().id(), letter == null ? null : letter.caseFile().id(),
                letter == null ? "not signed here" : letter.reference());
        return Answers.page(Templates.letterCheck(form, verdict, letter));
    }

    /** Reads a fingerprint that was typed or pasted, with or without blanks. */
    private static String typed(Form form) {
        String digits = form.value("fingerprint").replaceAll("(?i)sha-256|\\s", "").toLowerCase(Locale.ROOT);
        if (digits.isEmpty()) {
            form.error("file", "Choose a PDF, or enter its fingerprint below."
                    + (form.has("file") ? " This was sent in place of a file: " + form.value("file") : ""));
        } else if (!digits.matches("[0-9a-f]{64}")) {
            form.error("fingerprint", "A fingerprint has 64 digits from 0 to 9 and a to f. You entered " + digits.length() + " characters.");
        }
        return digits;
    }
}
