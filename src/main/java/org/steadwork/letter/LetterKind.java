package org.steadwork.letter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.steadwork.letter.disclosure.Recipient;

/**
 * A kind of letter, as the content lays it down: another kind is another file and a print template of the same name.
 *
 * @param key            name of the kind, its file and its template
 * @param title          title as printed and listed
 * @param offer          what the button that drafts it says
 * @param recipients     the kinds of reader it can go to
 * @param gate           what must be on record before it can be signed
 * @param seenFirst      when the worker sees it
 * @param suspendedBy    suspension tokens of red flags that hold it back; empty when it can be signed at any time
 * @param endsCare       whether it tells that treatment ends, so that it waits for what a discharge waits for
 * @param maxPages       pages it should not exceed, 1 or more; more is pointed out, not forbidden
 * @param readingGrade   school grade (United States) that the prose should not exceed; empty when no target is set
 * @param must           what it must say, for the clinician
 * @param mustNot        what it must not say, for the clinician
 * @param sections       its sections in printed order
 */
record LetterKind(String key, String title, String offer, Set<Recipient> recipients, GateRule gate, SeenFirst seenFirst,
                  Set<String> suspendedBy, boolean endsCare, int maxPages, OptionalInt readingGrade, List<String> must, List<String> mustNot, List<SectionKind> sections) {

    enum GateRule {
        NONE, CONSENT, CONSENT_OR_OVERRIDE
    }

    enum SeenFirst {
        REQUIRED("The worker sees it before it is signed"), OFFERED("A copy is offered before it is sent"),
        COPY_AT_ONCE("Not held up; the worker gets a copy at once"), IS_THE_READER("The worker is the reader");

        private final String label;

        SeenFirst(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    LetterKind {
        recipients = Set.copyOf(recipients);
        suspendedBy = Set.copyOf(suspendedBy);
        must = List.copyOf(must);
        mustNot = List.copyOf(mustNot);
        sections = List.copyOf(sections);
    }

    Optional<SectionKind> section(String sectionKey) {
        return sections.stream().filter(section -> section.key().equals(sectionKey)).findFirst();
    }
}
