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
import java.time.Instant;
import java.time.LocalDate;

/**
 * One step in a finding's life, as it was recorded. A mistaken one is undone with a reason and stays readable; since nothing of it is ever
 * changed otherwise, it is its own history.
 */
@Entity
@Table(name = "workplace_finding_step")
class FindingStep {

    @Id
    @GeneratedValue(generator = "workplace_finding_step_seq")
    @SequenceGenerator(name = "workplace_finding_step_seq", sequenceName = "workplace_finding_step_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "finding_id")
    private Finding finding;

    @Enumerated(EnumType.STRING)
    private FindingStage stage;

    @Column(name = "stepped_on")
    private LocalDate steppedOn;

    @Column(name = "agreed_with")
    private String agreedWith;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    @Column(name = "undone_by")
    private String undoneBy;

    @Column(name = "undone_at")
    private Instant undoneAt;

    @Column(name = "undo_reason")
    private String undoReason;

    protected FindingStep() {
    }

    FindingStep(Finding finding, FindingStage stage, LocalDate steppedOn, String agreedWith) {
        this.finding = finding;
        this.stage = stage;
        this.steppedOn = steppedOn;
        this.agreedWith = agreedWith;
    }

    void recorded(String by, Instant at) {
        recordedBy = by;
        recordedAt = at;
    }

    void undo(String reason, String by, Instant at) {
        if (undone()) {
            throw new IllegalStateException("This step was undone already");
        }
        undoReason = reason;
        undoneBy = by;
        undoneAt = at;
    }

    boolean undone() {
        return undoneAt != null;
    }

    Long id() {
        return id;
    }

    FindingStage stage() {
        return stage;
    }

    LocalDate steppedOn() {
        return steppedOn;
    }

    String agreedWith() {
        return agreedWith;
    }

    String recordedBy() {
        return recordedBy;
    }

    Instant recordedAt() {
        return recordedAt;
    }

    String undoneBy() {
        return undoneBy;
    }

    Instant undoneAt() {
        return undoneAt;
    }

    String undoReason() {
        return undoReason;
    }
}
