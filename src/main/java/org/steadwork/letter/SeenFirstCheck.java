package org.steadwork.letter;

import java.util.List;
import java.util.Optional;
import org.steadwork.web.Dates;

/** Checks that the worker has had the say that a kind of letter asks for, about this very version. */
final class SeenFirstCheck {

    private static final String KEY = "seen";

    private SeenFirstCheck() {
    }

    /** {@code events} are those of the letter, the newest first. */
    static Optional<Check> check(LetterKind kind, Letter letter, List<LetterEvent> events) {
        if (!letter.reader().kind().needsConsent()) {
            return Optional.empty();
        }
        return switch (kind.seenFirst()) {
            case IS_THE_READER -> Optional.empty();
            case COPY_AT_ONCE, OFFERED -> Optional.of(Check.look(KEY, "worker’s copy", kind.seenFirst().label()));
            case REQUIRED -> Optional.of(events.stream().filter(event -> !event.kind().afterSigning()).findFirst()
                    .map(event -> answered(letter, event))
                    .orElseGet(() -> Check.stop(KEY, "not shown", "Show it to the worker first, and record the answer")));
        };
    }

    private static Check answered(Letter letter, LetterEvent event) {
        String when = event.kind().label() + ", " + Dates.shown(event.happenedOn()) + ", " + event.how();
        if (event.letterVersion() != letter.version()) {
            return Check.stop(KEY, "changed since", when + ". The words were changed after that: show it again");
        }
        return switch (event.kind()) {
            case CHANGES_ASKED -> Check.stop(KEY, "changes asked", when + ". Correct the facts, or talk it over, and show it again");
            case DISAGREED -> Check.ask(KEY, "disagrees", when + ". An opinion need not change on request; say why it stays");
            default -> Check.holds(KEY, event.kind() == LetterEvent.Kind.AGREED ? "agreed" : "offered", when);
        };
    }
}
