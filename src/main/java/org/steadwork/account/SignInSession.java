package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.FetchType;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;

/** One signed-in browser. The cookie holds a random token; only its SHA-256 is stored, so a stolen table opens nothing. */
@Entity
@Table(name = "sign_in_session")
public class SignInSession {

    @Id
    @Column(name = "token_hash")
    private String tokenHash;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Column(name = "began_at")
    private Instant beganAt;

    @Column(name = "seen_at")
    private Instant seenAt;

    protected SignInSession() {
    }

    SignInSession(String tokenHash, Account account, Instant now) {
        this.tokenHash = tokenHash;
        this.account = account;
        this.beganAt = now;
        this.seenAt = now;
    }

    boolean aliveAt(Instant now, Duration idle, Duration longest) {
        return account.active() && now.isBefore(seenAt.plus(idle)) && now.isBefore(beganAt.plus(longest));
    }

    /** Notes use, at most once a minute so that reading pages does not mean writing. */
    void seen(Instant now) {
        if (now.isAfter(seenAt.plusSeconds(60))) {
            seenAt = now;
        }
    }

    Account account() {
        return account;
    }
}
