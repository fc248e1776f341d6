package org.steadwork.account;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.steadwork.account.trail.TrailHead;

/**
 * Writes and reads the audit trail. A change is noted in the same transaction as the change itself; {@link AuditSealer} binds what was
 * stored into a chain shortly after.
 */
@ApplicationScoped
public class AuditTrail {

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Inject
    SecurityIdentity identity;

    @Inject
    RequestOrigin origin;

    @Inject
    AuditSealer sealer;

    /**
     * Who looked at a patient's record or changed it.
     *
     * @param times how many entries of the trail are theirs
     */
    public record Reader(String actor, Instant latest, long times) {
    }

    /**
     * Notes that a patient's data were seen or changed.
     *
     * @param action what was done, as a verb with its object: {@code viewed symptoms}, {@code signed letter}
     * @param detail what exactly, without clinical content; may be null
     */
    @Transactional
    public void record(String action, Long patientId, Long caseFileId, String detail) {
        store(prepared(action, patientId, caseFileId, detail));
    }

    /** Notes what somebody did who is not signed in yet, or not any more. */
    @Transactional
    void recordBy(Account account, String action, String detail) {
        recordAs(account.id(), account.displayName(), action, null, null, detail);
    }

    /** Notes what the product refused somebody who said they were the owner of an account: perhaps it was not them. */
    @Transactional
    void recordRefusal(Account account, String action, String detail) {
        recordAs(account.id(), "Steadwork", action, null, null, account.userName() + ": " + detail);
    }

    /** Notes what the product did to an account by itself. */
    @Transactional
    void recordFor(Account account, String action, String detail) {
        recordAs(account.id(), "Steadwork", action, null, null, account.userName() + ", " + detail);
    }

    private void recordAs(Long accountId, String actor, String action, Long patientId, Long caseFileId, String detail) {
        store(event(accountId, actor, action, patientId, caseFileId, detail));
    }

    /** Stores what was prepared by {@link #prepared}, in the running transaction or one of its own. */
    @Transactional
    void store(AuditEvent event) {
        db.persist(event);
        sealer.notice();
    }

    /** Who asks, what for, from where, and when: all that is only known while a request runs. */
    AuditEvent prepared(String action, Long patientId, Long caseFileId, String detail) {
        boolean known = !identity.isAnonymous();
        return event(known ? identity.<Long>getAttribute("account-id") : null, known ? identity.<String>getAttribute("display-name") : "Steadwork", action,
                patientId, caseFileId, detail);
    }

    private AuditEvent event(Long accountId, String actor, String action, Long patientId, Long caseFileId, String detail) {
        // to the microsecond, as the database keeps it
        Instant now = Instant.now(clock).truncatedTo(ChronoUnit.MICROS);
        return new AuditEvent(now, accountId, actor, action, patientId, caseFileId, detail, origin.address());
    }

    public List<AuditEvent> latest(int most) {
        return db.createQuery("from AuditEvent order by id desc", AuditEvent.class).setMaxResults(most).getResultList();
    }

    /** Returns who read or changed a patient's record, the latest first. */
    public List<Reader> readers(long patientId, int most) {
        return db.createQuery("select e.actor, max(e.happenedAt), count(e) from AuditEvent e where e.patientId = ?1 group by e.actor"
                + " order by max(e.happenedAt) desc", Reader.class).setParameter(1, patientId).setMaxResults(most).getResultList();
    }

    /** Seals what is stored by now and returns where the trail ends, for a backup to keep beside it. */
    public TrailHead head() {
        try {
            return sealer.sealNow();
        } catch (SQLException e) {
            throw new IllegalStateException("The audit trail cannot be sealed", e);
        }
    }
}
