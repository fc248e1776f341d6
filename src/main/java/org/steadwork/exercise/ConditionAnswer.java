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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.Answer;

/** What is known of a condition that may bar exercises: the answer, by whom and when. */
@Entity
@Table(name = "condition_answer")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class ConditionAnswer {

    @Id
    @GeneratedValue(generator = "condition_answer_seq")
    @SequenceGenerator(name = "condition_answer_seq", sequenceName = "condition_answer_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "condition_key")
    private String condition;

    @Enumerated(EnumType.STRING)
    private Answer answer;

    @Column(name = "answered_by")
    private String answeredBy;

    @Column(name = "answered_at")
    private Instant answeredAt;

    protected ConditionAnswer() {
    }

    public ConditionAnswer(CaseFile caseFile, String condition) {
        this.caseFile = caseFile;
        this.condition = condition;
    }

    public void answer(Answer answer, String by, Instant at) {
        this.answer = answer;
        answeredBy = by;
        answeredAt = at;
    }

    public int version() {
        return version;
    }

    public String condition() {
        return condition;
    }

    public Answer answer() {
        return answer;
    }

    public String answeredBy() {
        return answeredBy;
    }

    public Instant answeredAt() {
        return answeredAt;
    }
}
