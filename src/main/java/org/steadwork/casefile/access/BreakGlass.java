package org.steadwork.casefile.access;

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
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** A case opened from outside its care team: by whom, why and for how long, and who of the leads looked at it since. */
@Entity
@Table(name = "break_glass")
public class BreakGlass {

    @Id
    @GeneratedValue(generator = "break_glass_seq")
    @SequenceGenerator(name = "break_glass_seq", sequenceName = "break_glass_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    private String reason;

    @Column(name = "opened_at")
    private Instant openedAt;

    @Column(name = "until_at")
    private Instant untilAt;

    @Column(name = "looked_at")
    private Instant lookedAt;

    @Column(name = "looked_by")
    private String lookedBy;

    protected BreakGlass() {
    }

    BreakGlass(CaseFile caseFile, Account account, String reason, Instant openedAt, Instant untilAt) {
        this.caseFile = caseFile;
        this.account = account;
        this.reason = reason;
        this.openedAt = openedAt;
        this.untilAt = untilAt;
    }

    /** Notes that a lead looked at it; who did first stays. */
    public void look(String by, Instant now) {
        if (lookedAt == null) {
            lookedAt = now;
            lookedBy = by;
        }
    }

    /** True while the case is still open through it. */
    public boolean openAt(Instant now) {
        return untilAt.isAfter(now);
    }

    public Long id() {
        return id;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public Account account() {
        return account;
    }

    public String reason() {
        return reason;
    }

    public Instant openedAt() {
        return openedAt;
    }

    public Instant untilAt() {
        return untilAt;
    }

    public Instant lookedAt() {
        return lookedAt;
    }

    public String lookedBy() {
        return lookedBy;
    }
}
