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
import java.math.BigDecimal;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.workplace.fit.Part;

/** One setting that was proposed when the assessment was saved; kept, so that later it can be told what was proposed. */
@Entity
@Table(name = "workplace_adjustment")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Adjustment {

    @Id
    @GeneratedValue(generator = "workplace_adjustment_seq")
    @SequenceGenerator(name = "workplace_adjustment_seq", sequenceName = "workplace_adjustment_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    private int number;

    @Enumerated(EnumType.STRING)
    private Part part;

    @Column(name = "found_mm")
    private BigDecimal foundMm;

    @Column(name = "proposed_mm")
    private BigDecimal proposedMm;

    protected Adjustment() {
    }

    Adjustment(WorkplaceAssessment assessment, int number, Part part, BigDecimal foundMm, BigDecimal proposedMm) {
        this.assessment = assessment;
        this.part = part;
        propose(number, foundMm, proposedMm);
    }

    void propose(int step, BigDecimal found, BigDecimal proposed) {
        number = step;
        foundMm = found;
        proposedMm = proposed;
    }

    public int number() {
        return number;
    }

    public Part part() {
        return part;
    }

    /** The setting as it was found, in mm; null when it was not looked at. */
    public BigDecimal foundMm() {
        return foundMm;
    }

    public BigDecimal proposedMm() {
        return proposedMm;
    }
}
