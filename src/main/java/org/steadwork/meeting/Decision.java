package org.steadwork.meeting;

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
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** What a meeting advises on a case. The treating clinician decides: see {@link DecisionAnswer}. It stays as it is once the meeting is closed. */
@Entity
@Table(name = "meeting_decision")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class Decision {

    @Id
    @GeneratedValue(generator = "meeting_decision_seq")
    @SequenceGenerator(name = "meeting_decision_seq", sequenceName = "meeting_decision_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "meeting_id")
    private ReviewMeeting meeting;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String words;

    private String reason;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "who_id")
    private Account who;

    @Column(name = "due_on")
    private LocalDate dueOn;

    @Column(name = "review_on")
    private LocalDate reviewOn;

    private String dissent;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected Decision() {
    }

    Decision(ReviewMeeting meeting, CaseFile caseFile) {
        this.meeting = meeting;
        this.caseFile = caseFile;
    }

    /**
     * What was decided.
     *
     * @param reviewOn day to look again, null for none; not before {@code dueOn}
     * @param dissent  another view that was held, may be null
     */
    record Terms(String words, String reason, Account who, LocalDate dueOn, LocalDate reviewOn, String dissent) {
    }

    void decide(Terms terms, String by, Instant at) {
        if (terms.reviewOn() != null && terms.reviewOn().isBefore(terms.dueOn())) {
            throw new IllegalArgumentException("What is due on " + terms.dueOn() + " is not looked at earlier, on " + terms.reviewOn());
        }
        words = terms.words();
        reason = terms.reason();
        who = terms.who();
        dueOn = terms.dueOn();
        reviewOn = terms.reviewOn();
        dissent = terms.dissent();
        recordedBy = by;
        recordedAt = at;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public ReviewMeeting meeting() {
        return meeting;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public String words() {
        return words;
    }

    public String reason() {
        return reason;
    }

    public Account who() {
        return who;
    }

    public LocalDate dueOn() {
        return dueOn;
    }

    public LocalDate reviewOn() {
        return reviewOn;
    }

    public String dissent() {
        return dissent;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }
}
