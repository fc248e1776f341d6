package org.steadwork.ownpage;

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
import java.time.LocalDate;
import org.steadwork.casefile.CaseFile;

/** A private link to the programme of one case. It opens with the patient's date of birth, until it ends, is revoked or is locked. */
@Entity
@Table(name = "own_link")
public class OwnLink {

    /** Wrong dates of birth after which a link is locked. */
    static final int TRIES = 5;

    @Id
    @GeneratedValue(generator = "own_link_seq")
    @SequenceGenerator(name = "own_link_seq", sequenceName = "own_link_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "token_hash")
    private String tokenHash;

    @Column(name = "made_by")
    private String madeBy;

    @Column(name = "made_at")
    private Instant madeAt;

    @Column(name = "expires_on")
    private LocalDate expiresOn;

    @Column(name = "revoked_by")
    private String revokedBy;

    @Column(name = "revoked_at")
    private Instant revokedAt;

    @Column(name = "failed_tries")
    private int failedTries;

    @Column(name = "locked_at")
    private Instant lockedAt;

    @Column(name = "last_used_at")
    private Instant lastUsedAt;

    protected OwnLink() {
    }

    /** @param expiresOn last day on which it opens */
    OwnLink(CaseFile caseFile, String tokenHash, LocalDate expiresOn, String madeBy, Instant madeAt) {
        this.caseFile = caseFile;
        this.tokenHash = tokenHash;
        this.expiresOn = expiresOn;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
    }

    /** True while it may be tried: not over, not revoked, not locked, the case open. */
    boolean alive(LocalDate today) {
        return !today.isAfter(expiresOn) && revokedAt == null && lockedAt == null && caseFile.closedOn() == null;
    }

    /** Tries a date of birth; the fifth wrong one locks the link. */
    public boolean opens(LocalDate birthDate, Instant now) {
        if (caseFile.patient().birthDate().equals(birthDate)) {
            failedTries = 0;
            lastUsedAt = now;
            return true;
        }
        failedTries++;
        if (failedTries >= TRIES) {
            lockedAt = now;
        }
        return false;
    }

    void revoke(String by, Instant now) {
        if (revokedAt == null) {
            revokedBy = by;
            revokedAt = now;
        }
    }

    public Long id() {
        return id;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public String madeBy() {
        return madeBy;
    }

    public Instant madeAt() {
        return madeAt;
    }

    public LocalDate expiresOn() {
        return expiresOn;
    }

    public String revokedBy() {
        return revokedBy;
    }

    public Instant revokedAt() {
        return revokedAt;
    }

    public Instant lockedAt() {
        return lockedAt;
    }

    public Instant lastUsedAt() {
        return lastUsedAt;
    }
}
