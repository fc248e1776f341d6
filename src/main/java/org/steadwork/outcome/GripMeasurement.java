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
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.body.Side;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.scoring.GripTrial;

/** The trials of one hand on one day, kilograms each; a trial without a reading has none, and the reason stands beside. */
@Entity
@Table(name = "grip_test")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class GripMeasurement {

    /** How many trials the method asks for. */
    public static final int TRIALS = 3;

    @Id
    @GeneratedValue(generator = "grip_test_seq")
    @SequenceGenerator(name = "grip_test_seq", sequenceName = "grip_test_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "tested_on")
    private LocalDate testedOn;

    @Enumerated(EnumType.STRING)
    private Side hand;

    @Column(name = "first_kg")
    private BigDecimal first;

    @Column(name = "second_kg")
    private BigDecimal second;

    @Column(name = "third_kg")
    private BigDecimal third;

    @Column(name = "not_done")
    private String notDone;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected GripMeasurement() {
    }

    public GripMeasurement(CaseFile caseFile, LocalDate testedOn, Side hand) {
        if (hand == Side.CENTRE) {
            throw new IllegalArgumentException("Grip is measured on the left or the right hand");
        }
        this.caseFile = caseFile;
        this.testedOn = testedOn;
        this.hand = hand;
    }

    /**
     * Records the trials.
     *
     * @param kg three readings in their order, null for one that was not done
     * @param notDone why one was not done; may be null
     */
    public void record(List<BigDecimal> kg, String notDone, String recordedBy, Instant recordedAt) {
        if (kg.size() != TRIALS) {
            throw new IllegalArgumentException("A hand has " + TRIALS + " trials, but these are " + kg.size());
        }
        first = kg.get(0);
        second = kg.get(1);
        third = kg.get(2);
        this.notDone = notDone;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
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

    public Side hand() {
        return hand;
    }

    public String notDone() {
        return notDone;
    }

    /** The readings in their order, null for one that was not done. */
    public List<BigDecimal> kilograms() {
        return Arrays.asList(first, second, third);
    }

    /** True when nothing at all stands here. */
    public boolean blank() {
        return first == null && second == null && third == null && notDone == null;
    }

    /** The trials as the method takes them; one that was not done counts when it has a reason. */
    public List<GripTrial> trials() {
        return kilograms().stream().filter(kg -> kg != null || notDone != null)
                .map(kg -> kg == null ? GripTrial.without(notDone) : GripTrial.of(kg.doubleValue())).collect(Collectors.toList());
    }
}
