package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

/** The place of a sealed entry in the chain; written by {@link AuditSealer} alone. */
@Entity
@Immutable
@Table(name = "audit_seal")
public class AuditSeal {

    @Id
    private Long sequence;

    @Column(name = "event_id")
    private Long eventId;

    @Column(name = "previous_hash")
    private String previousHash;

    private String hash;

    protected AuditSeal() {
    }

    public Long sequence() {
        return sequence;
    }

    public Long eventId() {
        return eventId;
    }

    public String hash() {
        return hash;
    }
}
