package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityExistsException;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/**
 * Signs a letter: prints it once more, keeps the file with its fingerprint, and notes what allowed it. The database lets one
 * signature through for a letter, and only for the version that was looked at.
 */
@ApplicationScoped
class Signing {

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
    Clock clock;

    /**
     * Signs.
     *
     * @param seen      the version of the letter the signer looked at
     * @param confirmed the signer's word for each check that asks, by the key of the check
     * @throws org.steadwork.kernel.StaleVersionException when the letter was saved meanwhile
     * @throws IllegalStateException  when a check stands in the way or an answer is missing
     * @throws jakarta.persistence.PersistenceException when somebody else signed or saved meanwhile
     */
    @Transactional
    public void sign(long caseId, int number, int seen, Account signer, Map<String, String> confirmed) {
        Letter letter = letters.numberedForChange(caseId, number).orElseThrow();
        if (letters.signed(letter).isPresent()) {
            throw new EntityExistsException("Letter " + letter.id() + " was signed meanwhile");
        }
        letter.requireVersion(seen);
        Desk desk = desks.look(letter, signer);
        if (desk.stopped()) {
            throw new IllegalStateException("A check stands in the way of signing letter " + letter.id());
        }
        if (!confirmed.keySet().containsAll(desk.asked().stream().map(Check::key).toList())) {
            throw new IllegalStateException("Not every question about letter " + letter.id() + " was answered");
        }
        String answers = desk.asked().stream().map(check -> check.text() + " Answer: " + confirmed.get(check.key())).collect(Collectors.joining("\n"));
        letters.add(new SignedLetter(letter, signer, Instant.now(clock), printer.signed(letter, desk.kind(), desk.sections(), signer),
                basis(desk), answers.isEmpty() ? null : answers));
        if (letter.replaces() != null && letters.withdrawal(letter.replaces()).isEmpty()) {
            letters.signed(letter.replaces()).ifPresent(wrong -> letters.add(new LetterWithdrawal(wrong, signer, Instant.now(clock),
                    "Our letter " + letter.reference() + " takes its place.")));
        }
        letters.flush();
        audit.record("signed letter", letter.caseFile().patient().id(), caseId, letter.reference());
    }

    /** Says what allowed the letter: the consent with the ticks that were used, or the override. */
    private String basis(Desk desk) {
        if (desk.gate() != Gate.IN_FORCE) {
            return desk.override().map(override -> "Override, on the ground of " + override.ground().label() + ", decided by " + override.decidedBy())
                    .orElse("No consent needed");
        }
        Consent consent = desk.consent().orElseThrow();
        String used = desk.sections().stream().map(SectionKind::information).distinct().filter(consent.ticked()::contains)
                .map(this::label).collect(Collectors.joining(", "));
        return "Consent of " + Dates.shown(consent.givenOn()) + ", " + consent.givenHow().label() + ", until " + Dates.shown(consent.holdsUntil())
                + (used.isEmpty() ? "; no tick used" : "; ticks used: " + used);
    }

    private String label(InformationCategory category) {
        return content.matrix().label(category).toLowerCase(Locale.ROOT);
    }
}
