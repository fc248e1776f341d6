package org.steadwork.casefile.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
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

    private static final String MINE = "(c.clinician.id = ?2 or exists (select m.id from CareTeamMember m where m.caseFile = c and m.account.id = ?2)"
            + " or exists (select b.id from BreakGlass b where b.caseFile = c and b.account.id = ?2 and b.untilAt > ?3))";

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
        return db.createQuery("select c.id from CaseFile c where c.id in ?1 and " + MINE, Long.class).setParameter(1, caseIds)
                .setParameter(2, current.id()).setParameter(3, Instant.now(clock)).getResultStream().collect(Collectors.toSet());
    }
}
