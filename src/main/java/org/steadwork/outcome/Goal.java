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
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;

/** A goal agreed with the patient, in the patient's words. */
@Entity
@Table(name = "goal")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Goal {

    @Id
    @GeneratedValue(generator = "goal_seq")
    @SequenceGenerator(name = "goal_seq", sequenceName = "goal_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String words;

    @Column(name = "set_on")
    private LocalDate setOn;

    @Enumerated(EnumType.STRING)
    private GoalState state = GoalState.NOT_YET;

    @Column(name = "where_now")
    private String whereNow;

    @Column(name = "reviewed_on")
    private LocalDate reviewedOn;

    private String expected;

    private Integer importance;

    private Integer difficulty;

    private Integer baseline;

    @Column(name = "given_up_on")
    private LocalDate givenUpOn;

    @Column(name = "why_given_up")
    private String whyGivenUp;

    protected Goal() {
    }

    public Goal(CaseFile caseFile, String words, LocalDate setOn) {
        this.caseFile = caseFile;
        this.words = words;
        this.setOn = setOn;
    }

    /**
     * Says what is expected and how much the goal counts in goal attainment.
     *
     * @param expected what reaching it looks like, may be null
     * @param importance and {@code difficulty} 1 to 3 each, null when the goal is not weighted by it
     * @param baseline where the patient starts, −1 or −2, null for the usual −1
     */
    public void scale(String expected, Integer importance, Integer difficulty, Integer baseline) {
        if (!weight(importance) || !weight(difficulty) || baseline != null && baseline != -1 && baseline != -2) {
            throw new IllegalArgumentException("A goal has weights from 1 to 3 and a start of -1 or -2, but these are " + importance + ", " + difficulty
                    + " and " + baseline);
        }
        this.expected = expected;
        this.importance = importance;
        this.difficulty = difficulty;
        this.baseline = baseline;
    }

    private static boolean weight(Integer given) {
        return given == null || given >= 1 && given <= 3;
    }

    /** Gives the goal up for a reason; it stays in the record and leaves the T-score at both times. */
    public void giveUp(String why, LocalDate on) {
        state = GoalState.GIVEN_UP;
        whyGivenUp = why;
        givenUpOn = on;
        reviewedOn = on;
    }

    /** Says where the patient is; {@code whereNow} may be null. */
    public void review(GoalState state, String whereNow, LocalDate on) {
        this.state = state;
        this.whereNow = whereNow;
        this.reviewedOn = on;
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

    public String words() {
        return words;
    }

    public LocalDate setOn() {
        return setOn;
    }

    public GoalState state() {
        return state;
    }

    public String whereNow() {
        return whereNow;
    }

    public String expected() {
        return expected;
    }

    public Integer importance() {
        return importance;
    }

    public Integer difficulty() {
        return difficulty;
    }

    /** Returns importance times difficulty, 1 where neither is given. */
    public int weightInAll() {
        return (importance == null ? 1 : importance) * (difficulty == null ? 1 : difficulty);
    }

    /** Returns where the patient started on the scale from −2 to +2: −1 unless said otherwise. */
    public int startsAt() {
        return baseline == null ? -1 : baseline;
    }

    public LocalDate givenUpOn() {
        return givenUpOn;
    }

    public String whyGivenUp() {
        return whyGivenUp;
    }

    public LocalDate reviewedOn() {
        return reviewedOn;
    }
}
