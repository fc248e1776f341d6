package org.steadwork.letter;

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

/** The note that a signed letter should no longer be relied on, by whom and why; the letter itself stays as it is. */
@Entity
@Immutable
@Table(name = "letter_withdrawal")
class LetterWithdrawal {

    @Id
    @Column(name = "letter_id")
    private Long letterId;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "withdrawn_by_id")
    private Account withdrawnBy;

    @Column(name = "withdrawn_at")
    private Instant withdrawnAt;

    private String reason;

    protected LetterWithdrawal() {
    }

    LetterWithdrawal(SignedLetter letter, Account withdrawnBy, Instant withdrawnAt, String reason) {
        this.letterId = letter.letterId();
        this.withdrawnBy = withdrawnBy;
        this.withdrawnAt = withdrawnAt;
        this.reason = reason;
    }

    public Account withdrawnBy() {
        return withdrawnBy;
    }

    public Instant withdrawnAt() {
        return withdrawnAt;
    }

    public String reason() {
        return reason;
    }
}
