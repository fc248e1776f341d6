package org.steadwork.letter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.letter.disclosure.Decision;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;

/**
 * Makes the first draft of a letter. It starts empty and adds: a fact gets in only if the disclosure matrix lets its category
 * through to this reader, and everything that stays out is listed with its reason.
 *
 * <p>A draft may be written before consent is on record; it cannot be signed then. So the draft is made as if the gate were
 * open, with the ticks on record, and what is never ticked is never in it.
 */
final class Composer {

    private final Matrix matrix;

    Composer(Matrix matrix) {
        this.matrix = matrix;
    }

    Draft draft(LetterKind kind, Recipient recipient, Set<InformationCategory> ticked, List<LetterFact> facts, CaseValues values) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (SectionKind section : sections(kind, recipient, ticked)) {
            texts.put(section.key(), text(section, allowed(facts, recipient, ticked), values));
        }
        return new Draft(texts, heldBack(kind, recipient, ticked, facts));
    }

    /** Returns the sections a letter to this reader may have, in printed order. Standing words belong to no category that can be closed. */
    List<SectionKind> sections(LetterKind kind, Recipient recipient, Set<InformationCategory> ticked) {
        return kind.sections().stream()
                .filter(section -> section.standing().isPresent() || decide(section.information(), recipient, ticked).allowed()).toList();
    }

    /** Returns what the case file holds and this letter does not, each once, with the reason. */
    List<Draft.HeldBack> heldBack(LetterKind kind, Recipient recipient, Set<InformationCategory> ticked, List<LetterFact> facts) {
        Map<String, Draft.HeldBack> heldBack = new LinkedHashMap<>();
        for (LetterFact fact : facts) {
            String what = fact.text().replace('\t', ' ');
            Decision decision = decide(fact.category(), recipient, ticked);
            if (!decision.allowed()) {
                heldBack.putIfAbsent(what, new Draft.HeldBack(what, decision.reason()));
            } else if (recipient == Recipient.INSURER && !decision.limit().isEmpty()) {
                heldBack.putIfAbsent(what, new Draft.HeldBack(what, "Goes to " + recipient.label() + " for the " + decision.limit()
                        + ": take over by hand what belongs to it"));
            } else if (fact.category() != InformationCategory.IDENTITY && kind.section(fact.section()).isEmpty()) {
                heldBack.putIfAbsent(what, new Draft.HeldBack(what, "This kind of letter has no place for it"));
            }
        }
        return new ArrayList<>(heldBack.values());
    }

    /** Returns what the case file gave to a letter of this kind to this reader, each with where it comes from and what lets it through. */
    List<Draft.Included> included(LetterKind kind, Recipient recipient, Set<InformationCategory> ticked, List<LetterFact> facts) {
        return facts.stream().filter(fact -> kind.section(fact.section()).isPresent())
                .flatMap(fact -> Stream.of(decide(fact.category(), recipient, ticked)).filter(decision -> taken(decision, recipient))
                        .map(decision -> new Draft.Included(fact.section(), fact.text().replace('\t', ' '), fact.because(), decision.reason())))
                .distinct().toList();
    }

    private List<LetterFact> allowed(List<LetterFact> facts, Recipient recipient, Set<InformationCategory> ticked) {
        return facts.stream().filter(fact -> taken(decide(fact.category(), recipient, ticked), recipient)).toList();
    }

    /** What an insurer may have of one claim only is for the clinician to pick; no rule of ours knows what was claimed. */
    private static boolean taken(Decision decision, Recipient recipient) {
        return decision.allowed() && (recipient != Recipient.INSURER || decision.limit().isEmpty());
    }

    private Decision decide(InformationCategory category, Recipient recipient, Set<InformationCategory> ticked) {
        return matrix.decide(category, new Reader(recipient, Gate.IN_FORCE, ticked));
    }

    private static String text(SectionKind section, List<LetterFact> facts, CaseValues values) {
        String found = facts.stream().filter(fact -> fact.section().equals(section.key()))
                .map(LetterFact::text).distinct().collect(Collectors.joining("\n"));
        String start = values.fill(section.start());
        boolean placeholder = start.startsWith("[") && start.endsWith("]");
        if (found.isEmpty() || start.isEmpty() || placeholder) {
            return found.isEmpty() ? start : found;
        }
        return start + "\n" + found;
    }
}
