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
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.workplace.fit.How;

/** One value of an assessment: of the person, of the work place, or of a criterion; with its unit and how it was obtained. */
@Entity
@Table(name = "workplace_measurement")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class RecordedMeasurement {

    @Id
    @GeneratedValue(generator = "workplace_measurement_seq")
    @SequenceGenerator(name = "workplace_measurement_seq", sequenceName = "workplace_measurement_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    private String measure;

    private BigDecimal amount;

    private String unit;

    @Enumerated(EnumType.STRING)
    private How how;

    @Column(name = "standard_error")
    private BigDecimal standardError;

    private boolean twice;

    private String readings;

    protected RecordedMeasurement() {
    }

    RecordedMeasurement(WorkplaceAssessment assessment, String measure) {
        this.assessment = assessment;
        this.measure = measure;
    }

    void takes(Taken taken) {
        amount = taken.amount();
        unit = taken.unit();
        how = taken.how();
        standardError = taken.standardError();
        twice = taken.twice();
        readings = taken.readings().isEmpty() ? null : taken.readings().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(";"));
    }

    String measure() {
        return measure;
    }

    Taken taken() {
        return new Taken(amount, unit, how, standardError, twice, readings == null ? List.of() : Stream.of(readings.split(";")).map(BigDecimal::new).toList());
    }

    Long assessmentId() {
        return assessment.id();
    }
}
