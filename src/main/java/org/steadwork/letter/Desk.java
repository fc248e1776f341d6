package org.steadwork.letter;

import java.util.List;
import java.util.Optional;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.pdf.LetterPdf;

/**
 * A draft on the desk: everything about it that a page shows and that signing looks at.
 *
 * @param sections the sections this reader may have, today
 * @param gate     the state of the consent for this reader, today
 * @param included what the case file gives to it, section by section, with the reason
 * @param file     the draft as printed, page for page as it would be signed
 */
record Desk(Letter letter, LetterKind kind, List<SectionKind> sections, Optional<Consent> consent, Gate gate,
            Optional<DisclosureOverride> override, List<Draft.Included> included, List<Draft.HeldBack> heldBack, List<LetterEvent> events, List<Check> checks, LetterPdf file) {

    Desk {
        sections = List.copyOf(sections);
        included = List.copyOf(included);
        heldBack = List.copyOf(heldBack);
        events = List.copyOf(events);
        checks = List.copyOf(checks);
    }

    boolean stopped() {
        return checks.stream().anyMatch(Check::stops);
    }

    List<Check> asked() {
        return checks.stream().filter(Check::asks).toList();
    }
}
