package org.steadwork.exercise;

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
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.Range;
import org.steadwork.kernel.StaleVersionException;

/** An exercise given to a patient: its dose, effort and pain ceiling, from when, and why it ended. */
@Entity
@Table(name = "exercise_prescription")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Prescription {

    @Id
    @GeneratedValue(generator = "exercise_prescription_seq")
    @SequenceGenerator(name = "exercise_prescription_seq", sequenceName = "exercise_prescription_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "exercise_key")
    private String exerciseKey;

    @Enumerated(EnumType.STRING)
    private PrescribedSide side;

    @Column(name = "hold_s")
    private Range hold;

    private Range repetitions;

    private int sides;

    @Column(name = "set_count")
    private Range sets;

    private Range minutes;

    @Column(name = "times_a_day")
    private Range timesADay;

    @Column(name = "every_hours")
    private Range everyHours;

    @Column(name = "days_a_week")
    private Range daysAWeek;

    private String effort;

    @Column(name = "pain_ceiling")
    private int painCeiling;

    @Column(name = "started_on")
    private LocalDate startedOn;

    private String note;

    private String considered;

    @Column(name = "given_by")
    private String givenBy;

    @Column(name = "given_at")
    private Instant givenAt;

    @Column(name = "ended_on")
    private LocalDate endedOn;

    @Column(name = "end_reason")
    private String endReason;

    protected Prescription() {
    }

    /** Gives an exercise from a day on, which is not before the case was opened. */
    public Prescription(CaseFile caseFile, Exercise exercise, LocalDate startedOn, String givenBy, Instant givenAt) {
        if (startedOn.isBefore(caseFile.openedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " has no exercise earlier, on " + startedOn);
        }
        this.caseFile = caseFile;
        this.exerciseKey = exercise.key();
        this.startedOn = startedOn;
        this.givenBy = givenBy;
        this.givenAt = givenAt;
    }

    /**
     * Sets how it is done.
     *
     * @param effort      load, effort or feeling; without it it is not a prescription
     * @param painCeiling highest pain during the exercise, [0, 10]
     */
    public void dose(Dose dose, PrescribedSide side, String effort, int painCeiling, String note) {
        if (dose.timesADay() != null && dose.everyHours() != null) {
            throw new IllegalArgumentException("A prescription is done so many times a day or every so many hours, not both");
        }
        if (effort == null || effort.isBlank()) {
            throw new IllegalArgumentException("A prescription names its load, effort or feeling");
        }
        if (!(painCeiling >= 0 && painCeiling <= 10)) {
            throw new IllegalArgumentException("Pain runs from 0 to 10, but the ceiling was " + painCeiling);
        }
        hold = dose.hold();
        repetitions = dose.repetitions();
        sides = dose.sides();
        sets = dose.sets();
        minutes = dose.minutes();
        timesADay = dose.timesADay();
        everyHours = dose.everyHours();
        daysAWeek = dose.daysAWeek();
        this.side = side;
        this.effort = effort;
        this.painCeiling = painCeiling;
        this.note = note;
    }

    /** Notes which cautions the clinician considered before giving it; what was considered earlier stays noted. */
    public void consider(Collection<String> cautions) {
        TreeSet<String> all = new TreeSet<>(considered());
        all.addAll(cautions);
        considered = all.isEmpty() ? null : String.join(" ", all);
    }

    public void end(LocalDate on, String reason) {
        if (endedOn != null) {
            throw new IllegalStateException("Prescription " + id + " was already ended on " + endedOn);
        }
        if (on.isBefore(startedOn)) {
            throw new IllegalArgumentException("An exercise started on " + startedOn + " cannot end earlier, on " + on);
        }
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("An exercise ends with a reason");
        }
        endedOn = on;
        endReason = reason;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public Dose dose() {
        return new Dose(hold, repetitions, sides, sets, minutes, timesADay, everyHours, daysAWeek);
    }

    public boolean current() {
        return endedOn == null;
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

    public String exerciseKey() {
        return exerciseKey;
    }

    public PrescribedSide side() {
        return side;
    }

    public String effort() {
        return effort;
    }

    public int painCeiling() {
        return painCeiling;
    }

    public LocalDate startedOn() {
        return startedOn;
    }

    public String note() {
        return note;
    }

    public List<String> considered() {
        return considered == null ? List.of() : List.of(considered.split(" "));
    }

    public String givenBy() {
        return givenBy;
    }

    public Instant givenAt() {
        return givenAt;
    }

    public LocalDate endedOn() {
        return endedOn;
    }

    public String endReason() {
        return endReason;
    }
}
