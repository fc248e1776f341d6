package org.steadwork.obstacle;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.Answer;

/** Whether one flag is there in a case: yes for present, no for absent; unknown and not asked are neither. */
@Entity
@Table(name = "obstacle_answer")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class ObstacleAnswer {

    @Id
    @GeneratedValue(generator = "obstacle_answer_seq")
    @SequenceGenerator(name = "obstacle_answer_seq", sequenceName = "obstacle_answer_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String obstacle;

    @Enumerated(EnumType.STRING)
    private Answer answer = Answer.NOT_ASKED;

    private String words;

    @Column(name = "answered_on")
    private LocalDate answeredOn;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected ObstacleAnswer() {
    }

    public ObstacleAnswer(CaseFile caseFile, String obstacle) {
        this.caseFile = caseFile;
        this.obstacle = obstacle;
    }

    /** Records an answer; {@code words} in the person's or the clinician's words, may be null. */
    public void answer(Answer answer, String words, LocalDate on, String recordedBy, Instant recordedAt) {
        this.answer = answer;
        this.words = words;
        this.answeredOn = on;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
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

    public String obstacle() {
        return obstacle;
    }

    public Answer answer() {
        return answer;
    }

    public boolean present() {
        return answer == Answer.YES;
    }

    public String words() {
        return words;
    }

    public LocalDate answeredOn() {
        return answeredOn;
    }

    public String recordedBy() {
        return recordedBy;
    }
}
