package org.steadwork.casefile;

import jakarta.persistence.TypedQuery;
import java.util.Collection;
import java.util.List;

/**
 * Which cases a bean of {@link Attention} is asked about: every one, or some by number. A query takes over the condition and has the
 * numbers bound; its own parameters must be named, since one query cannot mix names and places.
 */
public final class CaseScope {

    private static final CaseScope ALL = new CaseScope(null);

    private final List<Long> ids;

    private CaseScope(List<Long> ids) {
        this.ids = ids;
    }

    public static CaseScope all() {
        return ALL;
    }

    public static CaseScope one(long caseId) {
        return new CaseScope(List.of(caseId));
    }

    /** @param caseIds at least one, since a query about no case has no answer worth its cost */
    public static CaseScope of(Collection<Long> caseIds) {
        if (caseIds.isEmpty()) {
            throw new IllegalArgumentException("A scope holds at least one case");
        }
        return new CaseScope(List.copyOf(caseIds));
    }

    /** Returns the condition "open and in scope" on the case that a query names so. */
    public String open(String caseName) {
        return caseName + ".closedOn is null and " + any(caseName);
    }

    /** Returns the condition "in scope", for what is looked after when the case is closed too. */
    public String any(String caseName) {
        return ids == null ? "1 = 1" : caseName + ".id in :scope";
    }

    /** Binds the numbers to a query that took over one of the conditions. */
    public <T> TypedQuery<T> bind(TypedQuery<T> query) {
        return ids == null ? query : query.setParameter("scope", ids);
    }

    public boolean holds(long caseId) {
        return ids == null || ids.contains(caseId);
    }
}
