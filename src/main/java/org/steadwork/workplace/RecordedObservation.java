package org.steadwork.workplace;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.workplace.fit.Grade;

/** What was seen of one criterion; a criterion without one was not asked. */
@Entity
@Table(name = "workplace_observation")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class RecordedObservation {

    @Id
    @GeneratedValue(generator = "workplace_observation_seq")
    @SequenceGenerator(name = "workplace_observation_seq", sequenceName = "workplace_observation_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    @Column(name = "criterion_id")
    private String criterionId;

    @Enumerated(EnumType.STRING)
    private Grade grade;

    protected RecordedObservation() {
    }

    RecordedObservation(WorkplaceAssessment assessment, String criterionId, Grade grade) {
        this.assessment = assessment;
        this.criterionId = criterionId;
        this.grade = grade;
    }

    void grade(Grade seen) {
        grade = seen;
    }

    String criterionId() {
        return criterionId;
    }

    Grade grade() {
        return grade;
    }

    Long assessmentId() {
        return assessment.id();
    }
}
