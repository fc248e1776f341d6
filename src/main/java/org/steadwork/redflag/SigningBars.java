package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;

/** Says what has to be done about red flags before a visit note can be signed. */
@ApplicationScoped
public class SigningBars {

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    /** Returns a sentence for each open flag that demands a call of which none is on record; empty when the note can be signed. */
    public List<String> forVisit(long caseId) {
        Instant latestCall = calls.latestRecorded(caseId);
        return flags.of(caseId).stream().filter(flag -> flag.waitsForCall(latestCall))
                .map(flag -> "Record the call about “" + flag.name() + "” (" + flag.urgency().label() + ") before signing.").toList();
    }
}
