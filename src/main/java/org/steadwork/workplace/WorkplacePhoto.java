package org.steadwork.workplace;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.kernel.StaleVersionException;

/** A photograph of a work place: what it shows, who added it, and whether the patient lets it leave the clinic. Its bytes stand apart. */
@Entity
@Table(name = "workplace_photo")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class WorkplacePhoto {

    @Id
    @GeneratedValue(generator = "workplace_photo_seq")
    @SequenceGenerator(name = "workplace_photo_seq", sequenceName = "workplace_photo_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    private String caption;

    @Column(name = "may_leave")
    private boolean mayLeave;

    private int width;

    private int height;

    private String sha256;

    @Column(name = "added_by")
    private String addedBy;

    @Column(name = "added_at")
    private Instant addedAt;

    @Column(name = "withdrawn_by")
    private String withdrawnBy;

    @Column(name = "withdrawn_at")
    private Instant withdrawnAt;

    @Column(name = "withdrawal_reason")
    private String withdrawalReason;

    protected WorkplacePhoto() {
    }

    /** @param sha256 of the picture as it is kept, 64 hex digits */
    WorkplacePhoto(WorkplaceAssessment assessment, int width, int height, String sha256, String addedBy, Instant addedAt) {
        this.assessment = assessment;
        this.width = width;
        this.height = height;
        this.sha256 = sha256;
        this.addedBy = addedBy;
        this.addedAt = addedAt;
    }

    /** @param mayLeave the patient agreed that it may leave the clinic, with a letter */
    void shows(String newCaption, boolean newMayLeave) {
        if (withdrawn()) {
            throw new IllegalStateException("A withdrawn photograph stays as it is");
        }
        caption = newCaption;
        mayLeave = newMayLeave;
    }

    /** Withdraws it: its bytes go, this record stays. */
    void withdraw(String reason, String by, Instant at) {
        if (withdrawn()) {
            throw new IllegalStateException("This photograph was withdrawn already");
        }
        mayLeave = false;
        withdrawalReason = reason;
        withdrawnBy = by;
        withdrawnAt = at;
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

    public WorkplaceAssessment assessment() {
        return assessment;
    }

    public String caption() {
        return caption;
    }

    /** Tells whether the patient lets it leave the clinic; no unless it was said. */
    public boolean mayLeave() {
        return mayLeave;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    public String sha256() {
        return sha256;
    }

    public String addedBy() {
        return addedBy;
    }

    public Instant addedAt() {
        return addedAt;
    }

    public boolean withdrawn() {
        return withdrawnAt != null;
    }

    public String withdrawnBy() {
        return withdrawnBy;
    }

    public Instant withdrawnAt() {
        return withdrawnAt;
    }

    public String withdrawalReason() {
        return withdrawalReason;
    }
}
