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
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.workplace.fit.Verdict;

/**
 * Something at the work place that does not fit, or is near the edge, and what became of it. It may contribute to a
 * complaint; it is never said to cause one. Its words and regions come from the criterion in the content.
 */
@Entity
@Table(name = "workplace_finding")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Finding {

    @Id
    @GeneratedValue(generator = "workplace_finding_seq")
    @SequenceGenerator(name = "workplace_finding_seq", sequenceName = "workplace_finding_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "assessment_id")
    private WorkplaceAssessment assessment;

    @Column(name = "criterion_id")
    private String criterionId;

    private BigDecimal deviation;

    @Column(name = "give_or_take")
    private BigDecimal giveOrTake;

    @Enumerated(EnumType.STRING)
    private Verdict verdict;

    @Column(name = "found_on")
    private LocalDate foundOn;

    @Column(name = "advised_on")
    private LocalDate advisedOn;

    @Column(name = "agreed_on")
    private LocalDate agreedOn;

    @Column(name = "agreed_with")
    private String agreedWith;

    @Column(name = "done_on")
    private LocalDate doneOn;

    @Column(name = "checked_on")
    private LocalDate checkedOn;

    private String note;

    protected Finding() {
    }

    Finding(WorkplaceAssessment assessment, String criterionId) {
        this.caseFile = assessment.caseFile();
        this.criterionId = criterionId;
        this.foundOn = assessment.assessedOn();
        this.assessment = assessment;
    }

    /** @param deviation signed, in the criterion's unit; null when observed */
    void judged(WorkplaceAssessment by, BigDecimal deviation, BigDecimal giveOrTake, Verdict verdict) {
        this.assessment = by;
        this.deviation = deviation;
        this.giveOrTake = giveOrTake;
        this.verdict = verdict;
    }

    public void advised(LocalDate on) {
        advisedOn = notBeforeFound(on);
    }

    /** @param with who agreed, a person or an office; not blank */
    public void agreed(LocalDate on, String with) {
        if (with == null || with.isBlank()) {
            throw new IllegalArgumentException("Somebody agreed to it: say who");
        }
        agreedOn = notBeforeFound(on);
        agreedWith = with;
    }

    public void done(LocalDate on) {
        doneOn = notBeforeFound(on);
    }

    /** Closes the finding: somebody looked, and it fits or nothing more is to be done. */
    public void checked(LocalDate on) {
        checkedOn = notBeforeFound(on);
    }

    /** Takes a step that was recorded. */
    void takes(FindingStep step) {
        switch (step.stage()) {
            case FOUND -> throw new IllegalArgumentException("It was found already, on " + foundOn);
            case ADVISED -> advised(step.steppedOn());
            case AGREED -> agreed(step.steppedOn(), step.agreedWith());
            case DONE -> done(step.steppedOn());
            case CHECKED -> checked(step.steppedOn());
        }
    }

    /** Stands where the steps that were not undone leave it; of two of one stage the later recorded one counts. */
    void follows(List<FindingStep> steps) {
        advisedOn = null;
        agreedOn = null;
        agreedWith = null;
        doneOn = null;
        checkedOn = null;
        steps.stream().filter(step -> !step.undone()).forEach(this::takes);
    }

    public void note(String text) {
        note = text;
    }

    private LocalDate notBeforeFound(LocalDate on) {
        if (on.isBefore(foundOn)) {
            throw new IllegalArgumentException("Found on " + foundOn + ", so nothing came of it earlier, on " + on);
        }
        return on;
    }

    public FindingStage stage() {
        if (checkedOn != null) {
            return FindingStage.CHECKED;
        }
        if (doneOn != null) {
            return FindingStage.DONE;
        }
        if (agreedOn != null) {
            return FindingStage.AGREED;
        }
        return advisedOn != null ? FindingStage.ADVISED : FindingStage.FOUND;
    }

    /** Returns the day of its present stage. */
    public LocalDate stageOn() {
        return switch (stage()) {
            case FOUND -> foundOn;
            case ADVISED -> advisedOn;
            case AGREED -> agreedOn;
            case DONE -> doneOn;
            case CHECKED -> checkedOn;
        };
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

    public CaseFile caseFile() {
        return caseFile;
    }

    public WorkplaceAssessment assessment() {
        return assessment;
    }

    public String criterionId() {
        return criterionId;
    }

    /** Signed distance from the aim, in the criterion's unit; null when observed. */
    public BigDecimal deviation() {
        return deviation;
    }

    public BigDecimal giveOrTake() {
        return giveOrTake;
    }

    public Verdict verdict() {
        return verdict;
    }

    public LocalDate foundOn() {
        return foundOn;
    }

    public LocalDate advisedOn() {
        return advisedOn;
    }

    public LocalDate agreedOn() {
        return agreedOn;
    }

    public String agreedWith() {
        return agreedWith;
    }

    public LocalDate doneOn() {
        return doneOn;
    }

    public LocalDate checkedOn() {
        return checkedOn;
    }

    public String note() {
        return note;
    }
}
