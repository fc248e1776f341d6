package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.meeting.agenda.AskKind;

/** A clinician asks for a case to be discussed. It stands until a meeting discussed it, or it is taken back with a reason. */
@Entity
@Table(name = "case_ask")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class CaseAsk {

    @Id
    @GeneratedValue(generator = "case_ask_seq")
    @SequenceGenerator(name = "case_ask_seq", sequenceName = "case_ask_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Enumerated(EnumType.STRING)
    private AskKind kind;

    private String words;

    @Column(name = "asked_by")
    private String askedBy;

    @Column(name = "asked_at")
    private Instant askedAt;

    @Column(name = "settled_by")
    private String settledBy;

    @Column(name = "settled_at")
    private Instant settledAt;

    @Column(name = "settled_how")
    private String settledHow;

    protected CaseAsk() {
    }

    CaseAsk(CaseFile caseFile, AskKind kind, String words, String askedBy, Instant askedAt) {
        this.caseFile = caseFile;
        this.kind = kind;
        this.words = words;
        this.askedBy = askedBy;
        this.askedAt = askedAt;
    }

    /** Ends it: a meeting discussed the case, or it was taken back. */
    void settle(String by, Instant at, String how) {
        if (!open()) {
            throw new IllegalStateException("Ask " + id + " was settled already");
        }
        settledBy = by;
        settledAt = at;
        settledHow = how;
    }

    public boolean open() {
        return settledAt == null;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public AskKind kind() {
        return kind;
    }

    public String words() {
        return words;
    }

    public String askedBy() {
        return askedBy;
    }

    public Instant askedAt() {
        return askedAt;
    }

    public String settledBy() {
        return settledBy;
    }

    public Instant settledAt() {
        return settledAt;
    }

    public String settledHow() {
        return settledHow;
    }
}
