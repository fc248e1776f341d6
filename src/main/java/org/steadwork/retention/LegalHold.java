package org.steadwork.retention;

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
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;

/** Keeps a case from being removed while it is in force. A lifted one stays on record with who lifted it. */
@Entity
@Table(name = "legal_hold")
public class LegalHold {

    static final int LONGEST_REASON = 300;

    @Id
    @GeneratedValue(generator = "legal_hold_seq")
    @SequenceGenerator(name = "legal_hold_seq", sequenceName = "legal_hold_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String reason;

    @Column(name = "placed_by")
    private String placedBy;

    @Column(name = "placed_at")
    private Instant placedAt;

    @Column(name = "lifted_by")
    private String liftedBy;

    @Column(name = "lifted_at")
    private Instant liftedAt;

    protected LegalHold() {
    }

    LegalHold(CaseFile caseFile, String reason, String placedBy, Instant placedAt) {
        this.caseFile = caseFile;
        this.reason = reason;
        this.placedBy = placedBy;
        this.placedAt = placedAt;
    }

    /** @throws IllegalStateException when it was lifted already */
    void lift(String by, Instant at) {
        if (liftedAt != null) {
            throw new IllegalStateException("Hold " + id + " was lifted already");
        }
        liftedBy = by;
        liftedAt = at;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
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

    public String reason() {
        return reason;
    }

    public String placedBy() {
        return placedBy;
    }

    public Instant placedAt() {
        return placedAt;
    }

    public String liftedBy() {
        return liftedBy;
    }

    public Instant liftedAt() {
        return liftedAt;
    }

    public boolean inForce() {
        return liftedAt == null;
    }
}
