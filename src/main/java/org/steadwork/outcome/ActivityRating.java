package org.steadwork.outcome;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;

/** The rating of one own activity on one day, 0 to 10, or null when it was taken back. */
@Entity
@Table(name = "activity_rating")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class ActivityRating {

    @Id
    @GeneratedValue(generator = "activity_rating_seq")
    @SequenceGenerator(name = "activity_rating_seq", sequenceName = "activity_rating_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "activity_id")
    private OwnActivity activity;

    @Column(name = "rated_on")
    private LocalDate ratedOn;

    private Integer rating;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected ActivityRating() {
    }

    public ActivityRating(OwnActivity activity, LocalDate ratedOn) {
        if (ratedOn.isBefore(activity.caseFile().openedOn())) {
            throw new IllegalArgumentException("A case opened on " + activity.caseFile().openedOn() + " has no rating earlier, on " + ratedOn);
        }
        this.activity = activity;
        this.ratedOn = ratedOn;
    }

    public void rate(Integer rating, String recordedBy, Instant recordedAt) {
        if (rating != null && (rating < 0 || rating > 10)) {
            throw new IllegalArgumentException("An activity is rated from 0 to 10, but this is " + rating);
        }
        this.rating = rating;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    public OwnActivity activity() {
        return activity;
    }

    public LocalDate ratedOn() {
        return ratedOn;
    }

    public Integer rating() {
        return rating;
    }
}
