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
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.PainRule;

/** What the patient reports of one exercise for the seven days to a day. Diary numbers, shown as reported; never for an employer. */
@Entity
@Table(name = "exercise_adherence")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class AdherenceEntry {

    @Id
    @GeneratedValue(generator = "exercise_adherence_seq")
    @SequenceGenerator(name = "exercise_adherence_seq", sequenceName = "exercise_adherence_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "prescription_id")
    private Prescription prescription;

    @Column(name = "week_to")
    private LocalDate weekTo;

    private Integer done;

    private int planned;

    @Column(name = "pain_during")
    private Integer painDuring;

    @Enumerated(EnumType.STRING)
    @Column(name = "next_morning")
    private PainRule.Morning nextMorning;

    @Column(name = "reported_by")
    private String reportedBy;

    protected AdherenceEntry() {
    }

    /** @param weekTo last of the seven days; not before the exercise started */
    public AdherenceEntry(Prescription prescription, LocalDate weekTo) {
        if (weekTo.isBefore(prescription.startedOn())) {
            throw new IllegalArgumentException("An exercise started on " + prescription.startedOn() + " was not done by " + weekTo);
        }
        this.prescription = prescription;
        this.weekTo = weekTo;
    }

    /**
     * Takes what was reported.
     *
     * @param painDuring highest pain during or just after, [0, 10]; null when not asked
     */
    public void report(Adherence adherence, Integer painDuring, PainRule.Morning nextMorning, String reportedBy) {
        if (painDuring != null && !(painDuring >= 0 && painDuring <= 10)) {
            throw new IllegalArgumentException("Pain runs from 0 to 10, but was " + painDuring);
        }
        done = adherence.done();
        planned = adherence.planned();
        this.painDuring = painDuring;
        this.nextMorning = nextMorning;
        this.reportedBy = reportedBy;
    }

    public Adherence adherence() {
        return new Adherence(done, planned);
    }

    public Prescription prescription() {
        return prescription;
    }

    public LocalDate weekTo() {
        return weekTo;
    }

    public Integer painDuring() {
        return painDuring;
    }

    public PainRule.Morning nextMorning() {
        return nextMorning;
    }

    public String reportedBy() {
        return reportedBy;
    }
}
