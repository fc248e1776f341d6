package org.steadwork.worklist;

import jakarta.persistence.TypedQuery;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/**
 * What part of Today is asked for.
 *
 * @param rule key of a rule, blank for every rule
 * @param caseId a case, or null for all
 * @param page counts from 1
 */
record Filter(Whose whose, String rule, Long caseId, int page) {

    Filter {
        if (page < 1) {
            throw new IllegalArgumentException("Pages count from 1, but the page was " + page);
        }
    }

    /** The join to case {@code c}, where the condition needs it. */
    String join() {
        return whose.all() ? "" : " join e.caseFile c";
    }

    /** The condition on entry {@code e} and its case {@code c}. */
    String where() {
        return (whose.all() ? "" : " and (c.clinician.id = :clinician or e.urgency = org.steadwork.casefile.Attention.Urgency.NOW)")
                + (rule.isEmpty() ? "" : " and e.rule = :rule") + (caseId == null ? "" : " and e.caseFile.id = :case");
    }

    <T> TypedQuery<T> bind(TypedQuery<T> query) {
        if (!whose.all()) {
            query.setParameter("clinician", whose.clinician());
        }
        if (!rule.isEmpty()) {
            query.setParameter("rule", rule);
        }
        if (caseId != null) {
            query.setParameter("case", caseId);
        }
        return query;
    }

    Filter everyRule() {
        return new Filter(whose, "", caseId, 1);
    }

    boolean narrowed() {
        return !whose.all() || !rule.isEmpty() || caseId != null;
    }

    /** The address of a page of this part. */
    String href(int other) {
        return "/?who=" + whose.value() + (rule.isEmpty() ? "" : "&rule=" + URLEncoder.encode(rule, StandardCharsets.UTF_8)) + (caseId == null ? "" : "&case=" + caseId)
                + (other == 1 ? "" : "&page=" + other);
    }
}
