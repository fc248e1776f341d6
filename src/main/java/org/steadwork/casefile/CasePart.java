package org.steadwork.casefile;

import java.util.List;
import java.util.Optional;

/**
 * What a feature adds to every page of a case: facts and cautions in the rail, a mark in the navigation.
 * Each feature that has something to say is one bean of this type, so that the case need not know the features.
 * Each method costs at most one query.
 */
public interface CasePart {

    /** A line of the rail, e.g. "Red flags: incomplete, one answer missing". {@code state} is a modifier of the status class, or null. */
    record Fact(int order, String label, String value, String note, String state) {
    }

    /** An open caution. {@code stop} is for what suspends treatment. */
    record Caution(boolean stop, String text, String href) {
    }

    default List<Fact> facts(CaseFile caseFile) {
        return List.of();
    }

    default List<Caution> cautions(CaseFile caseFile) {
        return List.of();
    }

    /** A word beside a page's name in the case navigation, e.g. "1 draft". */
    default Optional<String> mark(CaseTab tab, CaseFile caseFile) {
        return Optional.empty();
    }

    /** Says in a sentence each what must be dealt with before the case may be closed; asked only there, and may cost more queries. */
    default List<String> closingBars(CaseFile caseFile) {
        return List.of();
    }
}
