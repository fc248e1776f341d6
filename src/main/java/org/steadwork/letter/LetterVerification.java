package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.steadwork.web.Dates;

/** Says whether and when a file was signed here. One changed byte makes another fingerprint, so only the very file is known. */
@ApplicationScoped
class LetterVerification {

    /** The largest file looked at, in bytes: none that is kept is larger. */
    static final int LARGEST_BYTES = SignedLetter.LARGEST_BYTES;

    @Inject
    Letters letters;

    @Transactional
    public Verdict of(String fingerprint) {
        Optional<SignedLetter> signed = letters.withFingerprint(fingerprint);
        if (signed.isEmpty()) {
            return new Verdict(fingerprint, signed, Optional.empty(),
                    "No letter with this fingerprint was signed here. The file was changed after signing, is a draft, or comes from elsewhere.");
        }
        Optional<String> withdrawn = letters.find(signed.get().letterId()).flatMap(letters::withdrawal)
                .map(note -> Dates.shown(note.withdrawnAt()) + ": " + note.reason());
        return new Verdict(fingerprint, signed, withdrawn, "Signed here on " + Dates.shown(signed.get().signedAt()) + " by "
                + signed.get().signedBy().fullName() + ", reference " + signed.get().reference() + ", to " + signed.get().recipientName() + "."
                + withdrawn.map(why -> " It should no longer be relied on since " + why).orElse(""));
    }
}
