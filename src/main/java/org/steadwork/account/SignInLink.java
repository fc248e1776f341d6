package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;

/** A link that lets one person set a password, once, within a day. Only the hash of its token is stored. */
@Entity
@Table(name = "sign_in_link")
public class SignInLink {

    static final Duration OPENS_FOR = Duration.ofHours(24);

    @Id
    @Column(name = "token_hash")
    private String tokenHash;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Column(name = "made_at")
    private Instant madeAt;

    @Column(name = "expires_at")
    private Instant expiresAt;

    @Column(name = "made_by")
    private String madeBy;

    @Column(name = "used_at")
    private Instant usedAt;

    protected SignInLink() {
    }

    SignInLink(String tokenHash, Account account, Instant now, String madeBy) {
        this.tokenHash = tokenHash;
        this.account = account;
        this.madeAt = now;
        this.expiresAt = now.plus(OPENS_FOR);
        this.madeBy = madeBy;
    }

    boolean opensAt(Instant now) {
        return usedAt == null && account.active() && now.isBefore(expiresAt);
    }

    void use(Instant now) {
        usedAt = now;
    }

    Account account() {
        return account;
    }

    public Instant expiresAt() {
        return expiresAt;
    }
}
