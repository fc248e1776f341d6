package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.CaseFile;
import org.steadwork.redflag.Suspensions;

/** Holds a kind of letter back while a suspension that its content names is in force. */
@ApplicationScoped
class RedFlagStops implements LetterStops {

    @Inject
    Suspensions suspensions;

    @Inject
    LetterContent content;

    @Override
    public Optional<String> stop(CaseFile file, LetterKind kind) {
        if (kind.suspendedBy().isEmpty()) {
            return Optional.empty();
        }
        Set<String> inForce = suspensions.inForce(file.id());
        return kind.suspendedBy().stream().filter(inForce::contains).findFirst()
                .map(token -> "An open red flag holds this letter back (“" + content.redFlagWords().stop(token)
                        + "”) until a clinician deals with it. An urgent referral can be signed");
    }
}
