package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.redflag.DischargeBars;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.Flags;

/**
 * Holds a kind of letter back while an open flag suspends what its content names. What is suspended only because a question has
 * not been asked yet holds treatment back, and no letter.
 */
@ApplicationScoped
class RedFlagStops implements LetterStops {

    @Inject
    Flags flags;

    @Inject
    DischargeBars bars;

    @Inject
    LetterContent content;

    @Override
    public Optional<String> stop(CaseFile file, LetterKind kind) {
        Optional<String> discharge = kind.endsCare() ? bars.of(file).stream().findFirst().map(bar -> bar.substring(0, bar.length() - 1)) : Optional.empty();
        if (discharge.isPresent()) {
            return discharge;
        }
        if (kind.suspendedBy().isEmpty()) {
            return Optional.empty();
        }
        return flags.of(file.id()).stream().filter(Flag::open).flatMap(flag -> flag.suspends().stream()).filter(kind.suspendedBy()::contains).findFirst()
                .map(token -> "An open red flag holds this letter back (“" + content.redFlagWords().stop(token)
                        + "”) until a clinician deals with it. An urgent referral can be signed");
    }
}
