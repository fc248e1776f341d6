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

/** How far one goal was attained on one day, from −2 (much less than expected) to +2, or null when it was taken back. */
@Entity
@Table(name = "goal_rating")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class GoalRating {

    @Id
    @GeneratedValue(generator = "goal_rating_seq")
    @SequenceGenerator(name = "goal_rating_seq", sequenceName = "goal_rating_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "goal_id")
    private Goal goal;

    @Column(name = "rated_on")
    private LocalDate ratedOn;

    private Integer attained;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected GoalRating() {
    }

    public GoalRating(Goal goal, LocalDate ratedOn) {
        this.goal = goal;
        this.ratedOn = ratedOn;
    }

    public void rate(Integer attained, String recordedBy, Instant recordedAt) {
        if (attained != null && (attained < -2 || attained > 2)) {
            throw new IllegalArgumentException("A goal is rated from -2 to 2, but this is " + attained);
        }
        this.attained = attained;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    public Goal goal() {
        return goal;
    }

    public LocalDate ratedOn() {
        return ratedOn;
    }

    public Integer attained() {
        return attained;
    }
}
