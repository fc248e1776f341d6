package org.steadwork.casefile;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;

/** A spell of one work status: it holds from its first day until its last, or until the next spell begins. */
@Entity
@Table(name = "work_status")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class WorkStatus {

    @Id
    @GeneratedValue(generator = "work_status_seq")
    @SequenceGenerator(name = "work_status_seq", sequenceName = "work_status_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Enumerated(EnumType.STRING)
    private WorkStatusCode code;

    @Column(name = "from_on")
    private LocalDate from;

    @Column(name = "until_on")
    private LocalDate until;

    @Enumerated(EnumType.STRING)
    @Column(name = "decided_by")
    private WorkStatusDecider decidedBy;

    @Column(name = "hours_a_week")
    private BigDecimal hoursAWeek;

    private String limits;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected WorkStatus() {
    }

    public WorkStatus(CaseFile caseFile, LocalDate from) {
        this.caseFile = caseFile;
        this.from = from;
    }

    /**
     * Says what the spell is.
     *
     * @param until last day, null for open; not before the first
     * @param hoursAWeek worked hours a week, 0 to 100, null when not known
     * @param limits in words, for example lifts to 12 kg; may be null
     */
    public void describe(WorkStatusCode code, LocalDate until, WorkStatusDecider decidedBy, BigDecimal hoursAWeek, String limits,
            String recordedBy, Instant recordedAt) {
        if (until != null && until.isBefore(from)) {
            throw new IllegalArgumentException("A work status from " + from + " cannot end earlier, on " + until);
        }
        if (hoursAWeek != null && (hoursAWeek.signum() < 0 || hoursAWeek.compareTo(BigDecimal.valueOf(100)) > 0)) {
            throw new IllegalArgumentException("Hours a week must be 0 to 100, but are " + hoursAWeek);
        }
        this.code = code;
        this.until = until;
        this.decidedBy = decidedBy;
        this.hoursAWeek = hoursAWeek;
        this.limits = limits;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
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

    public WorkStatusCode code() {
        return code;
    }

    public LocalDate from() {
        return from;
    }

    public LocalDate until() {
        return until;
    }

    public WorkStatusDecider decidedBy() {
        return decidedBy;
    }

    public BigDecimal hoursAWeek() {
        return hoursAWeek;
    }

    public String limits() {
        return limits;
    }

    public String recordedBy() {
        return recordedBy;
    }

    /** Says the details after the code: hours and limits. */
    public String details() {
        String hours = hoursAWeek == null ? "" : hoursAWeek.stripTrailingZeros().toPlainString() + "\u00a0h a week";
        return hours.isEmpty() ? (limits == null ? "" : limits) : limits == null ? hours : hours + ", " + limits;
    }
}
