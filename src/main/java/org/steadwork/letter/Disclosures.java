package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;

/** Tells other features what the consents of a case let through, and to whom. */
@ApplicationScoped
public class Disclosures {

    /**
     * The consent that counts for one reader of a case on a day: the one given last.
     *
     * @param employerId      number of the employer, or null; {@code correspondentId} likewise
     * @param ticked          what the worker ticked for this reader
     */
    public record State(Recipient kind, Long employerId, Long correspondentId, String name, Gate gate, Set<InformationCategory> ticked, LocalDate until) {
    }

    @Inject
    Consents consents;

    @Inject
    LetterContent content;

    /** Returns which information may go to whom, as it holds in this clinic. */
    public Matrix matrix() {
        return content.matrix();
    }

    /** Returns the consents of cases as they stand on a day, one a reader, by the number of the case, in one query. */
    public Map<Long, List<State>> of(Collection<Long> caseIds, LocalDate day) {
        Map<Long, Map<String, State>> byCase = new HashMap<>();
        for (Consent consent : caseIds.isEmpty() ? List.<Consent>of() : consents.ofCases(caseIds)) {
            State state = new State(consent.recipientKind(), consent.employerId(), consent.correspondentId(), consent.recipientName(),
                    consent.given().on(day), consent.ticked(), consent.holdsUntil());
            byCase.computeIfAbsent(consent.caseId(), id -> new LinkedHashMap<>())
                    .putIfAbsent(state.kind() + " " + state.employerId() + " " + state.correspondentId(), state);
        }
        Map<Long, List<State>> states = new HashMap<>();
        byCase.forEach((id, byReader) -> states.put(id, List.copyOf(byReader.values())));
        return states;
    }
}
