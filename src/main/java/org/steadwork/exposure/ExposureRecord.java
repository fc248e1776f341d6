package org.steadwork.exposure;

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
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;

/**
 * The result of an exposure method kept with a case, with what was entered and the whole answer as it was shown then.
 * It is never changed: a wrong one is corrected by a further one, or withdrawn, both with a reason.
 */
@Entity
@Table(name = "exposure_record")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class ExposureRecord {

    @Id
    @GeneratedValue(generator = "exposure_record_seq")
    @SequenceGenerator(name = "exposure_record_seq", sequenceName = "exposure_record_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String method;

    private String title;

    private String task;

    @Column(name = "assessed_on")
    private LocalDate assessedOn;

    @Column(name = "assessed_by")
    private String assessedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    private String headline;

    private String band;

    private String mark;

    @Column(columnDefinition = "text")
    private String entries;

    @Column(columnDefinition = "text")
    private String answer;

    private String tables;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "corrects_id")
    private ExposureRecord corrects;

    @Column(name = "correction_reason")
    private String correctionReason;

    @Column(name = "corrected_at")
    private Instant correctedAt;

    @Column(name = "withdrawn_at")
    private Instant withdrawnAt;

    @Column(name = "withdrawn_by")
    private String withdrawnBy;

    @Column(name = "withdrawal_reason")
    private String withdrawalReason;

    protected ExposureRecord() {
    }

    /**
     * Notes whose task was looked at, when and by whom.
     *
     * @param task what the person does, in a few words
     */
    public ExposureRecord(CaseFile caseFile, String task, LocalDate assessedOn, String assessedBy, Instant recordedAt) {
        this.caseFile = caseFile;
        this.task = task;
        this.assessedOn = assessedOn;
        this.assessedBy = assessedBy;
        this.recordedAt = recordedAt;
    }

    /**
     * Keeps what a method gave.
     *
     * @param method key of the method, title as it was called then
     * @param shown headline, band and mark, for lists
     * @param entries what was entered, as JSON
     * @param answer the whole answer, as JSON
     * @param tables mark of the tables and words it rests on
     */
    public void keep(String method, String title, Shown shown, String entries, String answer, String tables) {
        this.method = method;
        this.title = title;
        this.headline = shown.headline();
        this.band = shown.band();
        this.mark = shown.mark();
        this.entries = entries;
        this.answer = answer;
        this.tables = tables;
    }

    /** What a list shows of a result. */
    public record Shown(String headline, String band, String mark) {
    }

    /** Puts this record in the place of an earlier one, which stays to be read. */
    public void correct(ExposureRecord earlier, String reason) {
        earlier.requireStanding();
        corrects = earlier;
        correctionReason = reason;
        earlier.correctedAt = recordedAt;
    }

    public void withdraw(String by, Instant at, String reason) {
        requireStanding();
        withdrawnBy = by;
        withdrawnAt = at;
        withdrawalReason = reason;
    }

    public void requireVersion(int seen) {
        if (seen != version) {
            throw new StaleVersionException(seen, version);
        }
    }

    private void requireStanding() {
        if (!standing()) {
            throw new IllegalStateException("Exposure record " + id + " no longer stands");
        }
    }

    /** True while it was neither corrected nor withdrawn. */
    public boolean standing() {
        return correctedAt == null && withdrawnAt == null;
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

    public String method() {
        return method;
    }

    public String title() {
        return title;
    }

    public String task() {
        return task;
    }

    public LocalDate assessedOn() {
        return assessedOn;
    }

    public String assessedBy() {
        return assessedBy;
    }

    public String headline() {
        return headline;
    }

    public String band() {
        return band;
    }

    /** The modifier of the status word: in, near, out or none. */
    public String mark() {
        return mark;
    }

    public String entries() {
        return entries;
    }

    public String answer() {
        return answer;
    }

    public String tables() {
        return tables;
    }

    /** The record this one stands in the place of, or null. */
    public ExposureRecord corrects() {
        return corrects;
    }

    public String correctionReason() {
        return correctionReason;
    }

    public boolean corrected() {
        return correctedAt != null;
    }

    public boolean withdrawn() {
        return withdrawnAt != null;
    }

    public String withdrawnBy() {
        return withdrawnBy;
    }

    public String withdrawalReason() {
        return withdrawalReason;
    }
}
