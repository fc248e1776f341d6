package org.steadwork.redflag;

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
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.kernel.Answer;

/** The answer to one question, fact or rule item of a screen. A declined question is unknown, never no. */
@Entity
@Table(name = "red_flag_answer")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class RedFlagAnswer {

    @Id
    @GeneratedValue(generator = "red_flag_answer_seq")
    @SequenceGenerator(name = "red_flag_answer_seq", sequenceName = "red_flag_answer_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "screen_id")
    private RedFlagScreen screen;

    @Column(name = "question_key")
    private String key;

    @Enumerated(EnumType.STRING)
    private Answer answer;

    private String note;

    private boolean declined;

    protected RedFlagAnswer() {
    }

    RedFlagAnswer(RedFlagScreen screen, String key) {
        this.screen = screen;
        this.key = key;
    }

    void say(Answer answer, String note, boolean declined) {
        this.answer = declined ? Answer.UNKNOWN : answer;
        this.note = note;
        this.declined = declined;
    }

    public String key() {
        return key;
    }

    public Answer answer() {
        return answer;
    }

    public String note() {
        return note;
    }

    public boolean declined() {
        return declined;
    }
}
