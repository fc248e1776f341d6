package org.steadwork.account;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** Writes and reads the audit trail. A change is noted in the same transaction as the change itself. */
@ApplicationScoped
public class AuditTrail {

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Inject
    SecurityIdentity identity;

    /**
     * Notes that a patient's data were seen or changed.
     *
     * @param action what was done, as a verb with its object: {@code viewed symptoms}, {@code signed letter}
     * @param detail what exactly, without clinical content; may be null
     */
    @Transactional
    public void record(String action, Long patientId, Long caseFileId, String detail) {
        boolean known = !identity.isAnonymous();
        db.persist(new AuditEvent(Instant.now(clock), known ? identity.<Long>getAttribute("account-id") : null,
                known ? identity.<String>getAttribute("display-name") : "Steadwork", action, patientId, caseFileId, detail));
    }

    public List<AuditEvent> latest(int most) {
        return db.createQuery("from AuditEvent order by id desc", AuditEvent.class).setMaxResults(most).getResultList();
    }

    public List<AuditEvent> ofPatient(long patientId, int most) {
        return db.createQuery("from AuditEvent where patientId = ?1 order by id desc", AuditEvent.class)
                .setParameter(1, patientId).setMaxResults(most).getResultList();
    }
}
