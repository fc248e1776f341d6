package org.steadwork.casefile.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.CurrentAccount;

/**
 * Who may open which case. Under the rule {@code care-team}: the clinician who treats it, the members of its care team, the lead (who answers
 * for all care in the clinic), and for some hours whoever gave a reason. Under {@code clinic}: every clinician. The assistant's pages hold no
 * clinical detail and are open to assistants under both.
 */
@ApplicationScoped
public class CaseAccess {

    private static final String MINE = "(%1$s.clinician.id = :reader or exists (select m.id from CareTeamMember m where m.caseFile = %1$s and m.account.id = :reader)"
            + " or exists (select b.id from BreakGlass b where b.caseFile = %1$s and b.account.id = :reader and b.untilAt > :readAt))";

    @Inject
    EntityManager db;

    @Inject
    CurrentAccount current;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.access")
    AccessRule rule;

    public AccessRule rule() {
        return rule;
    }

    /** True when nothing is closed to whoever asks, so that no query is needed. */
    public boolean opensEvery() {
        return rule == AccessRule.CLINIC || current.lead() || !current.clinician();
    }

    public boolean opens(long caseId) {
        return opensEvery() || openOf(Set.of(caseId)).contains(caseId);
    }

    /** Returns those of the cases that whoever asks may open, in one query. */
    public Set<Long> openOf(Collection<Long> caseIds) {
        if (opensEvery() || caseIds.isEmpty()) {
            return Set.copyOf(caseIds);
        }
        return bind(db.createQuery("select c.id from CaseFile c where c.id in :cases" + where("c"), Long.class)).setParameter("cases", caseIds)
                .getResultStream().collect(Collectors.toSet());
    }

    /** Returns the condition, with its "and", on the case that a query names so; empty when every case is open. */
    public String where(String caseName) {
        return opensEvery() ? "" : " and " + MINE.formatted(caseName);
    }

    /** Binds who asks, and when, to a query that took over the condition. */
    public <T> TypedQuery<T> bind(TypedQuery<T> query) {
        return opensEvery() ? query : query.setParameter("reader", current.id()).setParameter("readAt", Instant.now(clock));
    }
}
