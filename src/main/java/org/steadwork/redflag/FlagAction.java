package org.steadwork.redflag;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDateTime;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** A call about the open flags of a case: who was called, when, by whom, and what they answered. */
@Entity
@Table(name = "red_flag_call")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class FlagAction {

    @Id
    @GeneratedValue(generator = "red_flag_call_seq")
    @SequenceGenerator(name = "red_flag_call_seq", sequenceName = "red_flag_call_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String called;

    @Column(name = "called_role")
    private String role;

    @Column(name = "called_at")
    private LocalDateTime calledAt;

    private String said;

    private boolean accepted;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "recorded_by_id")
    private Account recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected FlagAction() {
    }

    /** @param accepted whether the person called took the patient over */
    public FlagAction(CaseFile caseFile, String called, String role, LocalDateTime calledAt, String said, boolean accepted, Account by, Instant now) {
        this.caseFile = caseFile;
        this.called = called;
        this.role = role;
        this.calledAt = calledAt;
        this.said = said;
        this.accepted = accepted;
        this.recordedBy = by;
        this.recordedAt = now;
    }

    public String called() {
        return called;
    }

    public String role() {
        return role;
    }

    /** Clinic time of the call. */
    public LocalDateTime calledAt() {
        return calledAt;
    }

    public String said() {
        return said;
    }

    /** True when the person called took the patient over. */
    public boolean accepted() {
        return accepted;
    }

    public Account recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }
}
