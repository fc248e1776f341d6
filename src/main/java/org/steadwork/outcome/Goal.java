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
    @SequenceGenerator(name = "goal_seq", sequenceName = "goal_seq")
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

    protected Goal() {
    }

    public Goal(CaseFile caseFile, String words, LocalDate setOn) {
        this.caseFile = caseFile;
        this.words = words;
        this.setOn = setOn;
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

    public LocalDate reviewedOn() {
        return reviewedOn;
    }
}
