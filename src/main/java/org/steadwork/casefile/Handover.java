package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;

/** A case that one clinician gave to another: who, to whom, when and why. Written once and never changed. */
@Entity
@Immutable
@Table(name = "case_handover")
public class Handover {

    @Id
    @GeneratedValue(generator = "case_handover_seq")
    @SequenceGenerator(name = "case_handover_seq", sequenceName = "case_handover_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "from_id")
    private Account from;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "to_id")
    private Account to;

    private String reason;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "handed_by_id")
    private Account handedBy;

    @Column(name = "handed_at")
    private Instant handedAt;

    protected Handover() {
    }

    /** Gives the case to another clinician and keeps why. */
    Handover(CaseFile caseFile, Account to, String reason, Account handedBy, Instant handedAt) {
        this.caseFile = caseFile;
        this.from = caseFile.clinician();
        this.to = to;
        this.reason = reason;
        this.handedBy = handedBy;
        this.handedAt = handedAt;
        caseFile.handOver(to);
    }

    public Account from() {
        return from;
    }

    public Account to() {
        return to;
    }

    public String reason() {
        return reason;
    }

    public Account handedBy() {
        return handedBy;
    }

    public Instant handedAt() {
        return handedAt;
    }
}
