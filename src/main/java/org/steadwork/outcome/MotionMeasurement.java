package org.steadwork.outcome;

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
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.OptionalDouble;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.body.Side;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.outcome.scoring.MotionReading;

/** One active motion of one side on one day: degrees, or the reason why it was not measured. */
@Entity
@Table(name = "motion_test")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class MotionMeasurement {

    @Id
    @GeneratedValue(generator = "motion_test_seq")
    @SequenceGenerator(name = "motion_test_seq", sequenceName = "motion_test_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "tested_on")
    private LocalDate testedOn;

    private String motion;

    @Enumerated(EnumType.STRING)
    private Side side;

    private BigDecimal degrees;

    @Enumerated(EnumType.STRING)
    private Motion.Device device;

    @Column(name = "pain_limited")
    private boolean painLimited;

    @Column(name = "not_measured")
    private String notMeasured;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected MotionMeasurement() {
    }

    public MotionMeasurement(CaseFile caseFile, LocalDate testedOn, String motion, Side side) {
        this.caseFile = caseFile;
        this.testedOn = testedOn;
        this.motion = motion;
        this.side = side;
    }

    /** Records a reading; {@code degrees} or {@code notMeasured}, the other null; both null take back what stood here. */
    public void record(BigDecimal degrees, Motion.Device device, boolean painLimited, String notMeasured, String recordedBy, Instant recordedAt) {
        if (degrees != null && notMeasured != null) {
            throw new IllegalArgumentException("A motion has either a value or a reason why it was not measured");
        }
        this.degrees = degrees;
        this.device = device;
        this.painLimited = painLimited;
        this.notMeasured = notMeasured;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    /** Returns the reading, for the motion as the content has it. */
    public MotionReading reading(Motion of) {
        return new MotionReading(of, side, degrees == null ? OptionalDouble.empty() : OptionalDouble.of(degrees.doubleValue()), device, painLimited,
                recordedBy, notMeasured);
    }

    /** True when nothing at all stands here. */
    public boolean blank() {
        return degrees == null && notMeasured == null;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public LocalDate testedOn() {
        return testedOn;
    }

    public String motion() {
        return motion;
    }

    public Side side() {
        return side;
    }

    public BigDecimal degrees() {
        return degrees;
    }

    public Motion.Device device() {
        return device;
    }

    public boolean painLimited() {
        return painLimited;
    }

    public String notMeasured() {
        return notMeasured;
    }
}
