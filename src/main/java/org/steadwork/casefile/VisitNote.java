package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToOne;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.PostUpdate;
import jakarta.persistence.PreRemove;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.kernel.StaleVersionException;

/**
 * The note of one visit in four parts. It is a draft until a clinician signs it; from then on it is never changed again and
 * only addenda are written under it.
 */
@Entity
@Table(name = "visit_note")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class VisitNote {

    /** Longest part, in characters. */
    public static final int LONGEST = 8000;

    @Id
    @GeneratedValue(generator = "visit_note_seq")
    @SequenceGenerator(name = "visit_note_seq", sequenceName = "visit_note_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @OneToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    @Column(columnDefinition = "text")
    private String subjective;

    @Column(columnDefinition = "text")
    private String objective;

    @Column(columnDefinition = "text")
    private String assessment;

    @Column(columnDefinition = "text")
    private String plan;

    @Column(name = "drafted_by")
    private String draftedBy;

    @Column(name = "drafted_at")
    private Instant draftedAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "signed_by_id")
    private Account signer;

    @Column(name = "signed_by")
    private String signedBy;

    @Column(name = "signed_at")
    private Instant signedAt;

    @Transient
    private boolean signedInStore;

    protected VisitNote() {
    }

    public VisitNote(Visit visit) {
        this.visit = visit;
    }

    /** Writes the draft; refused once the note is signed. */
    public void draft(String subjective, String objective, String assessment, String plan, String by, Instant at) {
        if (signed()) {
            throw new IllegalStateException("The note of visit " + visit.number() + " is signed and stays as it is; write an addendum");
        }
        this.subjective = subjective;
        this.objective = objective;
        this.assessment = assessment;
        this.plan = plan;
        this.draftedBy = by;
        this.draftedAt = at;
    }

    /** Signs the note with the name and profession that its signer has now. */
    public void sign(Account by, Instant at) {
        if (signed()) {
            throw new IllegalStateException("The note of visit " + visit.number() + " is signed already");
        }
        signer = by;
        signedBy = by.fullName() + (by.profession() == null ? "" : ", " + by.profession());
        signedAt = at;
    }

    @PostLoad
    @PostPersist
    @PostUpdate
    void rememberWhatIsStored() {
        signedInStore = signed();
    }

    // The last line of defence: whatever path led here, a note stored as signed is not written again.
    @PreUpdate
    @PreRemove
    void refuseChangeOnceSigned() {
        if (signedInStore) {
            throw new IllegalStateException("Note " + id + " is signed and cannot be changed or removed");
        }
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public Visit visit() {
        return visit;
    }

    public String subjective() {
        return subjective;
    }

    public String objective() {
        return objective;
    }

    public String assessment() {
        return assessment;
    }

    public String plan() {
        return plan;
    }

    public String draftedBy() {
        return draftedBy;
    }

    public Instant draftedAt() {
        return draftedAt;
    }

    public String signedBy() {
        return signedBy;
    }

    public Instant signedAt() {
        return signedAt;
    }

    public boolean signed() {
        return signedAt != null;
    }
}
