package org.steadwork.casefile;

import jakarta.persistence.Parameter;
import jakarta.persistence.TypedQuery;
import java.util.Collection;
import java.util.List;

/**
 * Which cases a bean of {@link Attention} is asked about: every one, some by number, or those from one number to another. A query takes
 * over the condition and has the numbers bound; its own parameters must be named, since one query cannot mix names and places.
 */
public final class CaseScope {

    private static final CaseScope ALL = new CaseScope(null, null);

    private final List<Long> ids;
    private final Numbers numbers;

    private record Numbers(long first, long last) {
    }

    private CaseScope(List<Long> ids, Numbers numbers) {
        this.ids = ids;
        this.numbers = numbers;
    }

    public static CaseScope all() {
        return ALL;
    }

    public static CaseScope one(long caseId) {
        return new CaseScope(List.of(caseId), null);
    }

    /** @param caseIds at least one, since a query about no case has no answer worth its cost */
    public static CaseScope of(Collection<Long> caseIds) {
        if (caseIds.isEmpty()) {
            throw new IllegalArgumentException("A scope holds at least one case");
        }
        return new CaseScope(List.copyOf(caseIds), null);
    }

    /** The cases from one number to another, both among them, of which these are open. */
    public static CaseScope between(long first, long last, List<Long> open) {
        return new CaseScope(List.copyOf(open), new Numbers(first, last));
    }

    /** Returns the condition "open and in scope" for a query of cases, which names the case so. */
    public String open(String caseName) {
        return caseName + ".closedOn is null and " + among(caseName + ".id");
    }

    /**
     * Returns the same for a query of rows that belong to cases. The numbers are asked of the row's own column ({@code fk}, since a joined
     * case would stand in for it): with the condition on the case, H2 reads every row there is and looks each one's case up.
     *
     * @param caseName how the query names the joined case
     * @param reference how a row leads to its case, as {@code s.caseFile}
     */
    public String open(String caseName, String reference) {
        return caseName + ".closedOn is null and " + among("fk(" + reference + ")");
    }

    /** Returns the condition "in scope" on a row's reference to its case, for what is looked after when the case is closed too. */
    public String any(String reference) {
        return numbers == null ? among("fk(" + reference + ")") : "fk(" + reference + ") between :scopeFirst and :scopeLast";
    }

    private String among(String number) {
        return ids == null ? "1 = 1" : ids.isEmpty() ? "1 = 0" : number + " in :scope";
    }

    /** Binds the numbers to a query that took over one of the conditions. */
    public <T> TypedQuery<T> bind(TypedQuery<T> query) {
        for (Parameter<?> parameter : query.getParameters()) {
            switch (String.valueOf(parameter.getName())) {
                case "scope" -> query.setParameter("scope", ids);
                case "scopeFirst" -> query.setParameter("scopeFirst", numbers.first());
                case "scopeLast" -> query.setParameter("scopeLast", numbers.last());
                default -> { } // the query's own
            }
        }
        return query;
    }

    public boolean holds(long caseId) {
        if (numbers != null) {
            return numbers.first() <= caseId && caseId <= numbers.last();
        }
        return ids == null || ids.contains(caseId);
    }
}
