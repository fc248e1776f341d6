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

    /** Returns the condition "open and in scope" for a query of cases, which names the case so. */
    public String open(String caseName) {
        return caseName + ".closedOn is null and " + in(caseName + ".id");
    }

    /**
     * Returns the same for a query of rows that belong to cases. The numbers are asked of the row's own column ({@code fk}, since a joined
     * case would stand in for it): with the condition on the case, H2 reads every row there is and looks each one's case up.
     *
     * @param caseName how the query names the joined case
     * @param reference how a row leads to its case, as {@code s.caseFile}
     */
    public String open(String caseName, String reference) {
        return caseName + ".closedOn is null and " + any(reference);
    }

    /** Returns the condition "in scope" on a row's reference to its case, for what is looked after when the case is closed too. */
    public String any(String reference) {
        return in("fk(" + reference + ")");
    }

    private String in(String number) {
        return ids == null ? "1 = 1" : number + " in :scope";
    }

    /** Binds the numbers to a query that took over one of the conditions. */
    public <T> TypedQuery<T> bind(TypedQuery<T> query) {
        return ids == null ? query : query.setParameter("scope", ids);
    }

    public boolean holds(long caseId) {
        return ids == null || ids.contains(caseId);
    }
}
