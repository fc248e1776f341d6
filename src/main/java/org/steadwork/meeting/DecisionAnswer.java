package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;

/** What the treating clinician answers to a decision of the meeting, with a word why. Written once, never changed. */
@Entity
@Immutable
@Table(name = "meeting_decision_answer")
class DecisionAnswer {

    @Id
    @Column(name = "decision_id")
    private Long decisionId;

    private boolean accepted;

    private String why;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "answered_by_id")
    private Account answeredBy;

    @Column(name = "answered_at")
    private Instant answeredAt;

    protected DecisionAnswer() {
    }

    DecisionAnswer(Decision decision, boolean accepted, String why, Account by, Instant at) {
        this.decisionId = decision.id();
        this.accepted = accepted;
        this.why = why;
        this.answeredBy = by;
        this.answeredAt = at;
    }

    public Long decisionId() {
        return decisionId;
    }

    public boolean accepted() {
        return accepted;
    }

    public String why() {
        return why;
    }

    public Account answeredBy() {
        return answeredBy;
    }

    public Instant answeredAt() {
        return answeredAt;
    }
}
