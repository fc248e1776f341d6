package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;

/** One line of the audit trail: who saw or changed what, and when. Never changed, never removed by the product. */
@Entity
@Table(name = "audit_event")
public class AuditEvent {

    @Id
    @GeneratedValue(generator = "audit_event_seq")
    @SequenceGenerator(name = "audit_event_seq", sequenceName = "audit_event_seq", allocationSize = 1)
    private Long id;

    @Column(name = "happened_at")
    private Instant happenedAt;

    @Column(name = "account_id")
    private Long accountId;

    private String actor;

    private String action;

    @Column(name = "patient_id")
    private Long patientId;

    @Column(name = "case_file_id")
    private Long caseFileId;

    private String detail;

    /** The network address that asked; null for what the product did by itself. */
    private String address;

    protected AuditEvent() {
    }

    AuditEvent(Instant happenedAt, Long accountId, String actor, String action, Long patientId, Long caseFileId, String detail,
            String address) {
        this.happenedAt = happenedAt;
        this.accountId = accountId;
        this.actor = actor;
        this.action = action;
        this.patientId = patientId;
        this.caseFileId = caseFileId;
        this.detail = detail;
        this.address = address;
    }

    public Long id() {
        return id;
    }

    public Instant happenedAt() {
        return happenedAt;
    }

    public String actor() {
        return actor;
    }

    public String action() {
        return action;
    }

    public Long patientId() {
        return patientId;
    }

    public Long caseFileId() {
        return caseFileId;
    }

    public String detail() {
        return detail;
    }

    public String address() {
        return address;
    }

    public Long accountId() {
        return accountId;
    }
}
