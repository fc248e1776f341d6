package org.steadwork.letter;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.steadwork.letter.disclosure.Recipient;

/** Words that certain letters must carry. They can be reworded, in the content and in a draft, but not taken out. */
enum Standing {
    CAUTION, DEFERS_TO_MEDICAL_JUDGEMENT, ADVISORY, NOT_A_CERTIFICATE;

    /** Returns what a letter to these readers must carry. */
    static Set<Standing> requiredFor(Collection<Recipient> recipients) {
        Set<Standing> required = EnumSet.noneOf(Standing.class);
        if (recipients.contains(Recipient.DOCTOR) || recipients.contains(Recipient.SPECIALIST)) {
            required.add(CAUTION);
            required.add(DEFERS_TO_MEDICAL_JUDGEMENT);
        }
        if (recipients.contains(Recipient.EMPLOYER)) {
            required.add(ADVISORY);
            required.add(NOT_A_CERTIFICATE);
        }
        return required;
    }
}
