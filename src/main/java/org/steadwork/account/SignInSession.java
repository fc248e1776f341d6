package org.steadwork.account;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;

/** One signed-in browser. The cookie holds a random token; only its SHA-256 is stored, so a stolen table opens nothing. */
@Entity
@Table(name = "sign_in_session")
public class SignInSession {

    /** What is still asked for after the first step, before the session opens any page. */
    enum Awaiting {
        CODE, ENROLMENT
    }

    /** What was right before that, in the words of the audit trail. */
    enum FirstStep {
        PASSWORD("password"), OPENID("OpenID Connect");

        private final String words;

        FirstStep(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private static final Duration TO_TYPE_A_CODE = Duration.ofMinutes(10);

    @Id
    @Column(name = "token_hash")
    private String tokenHash;

    /** A number to name the session by on pages, which never hold the hash. */
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Column(name = "began_at")
    private Instant beganAt;

    @Column(name = "seen_at")
    private Instant seenAt;

    private String address;

    private String browser;

    @Enumerated(EnumType.STRING)
    private Awaiting awaiting;

    @Enumerated(EnumType.STRING)
    @Column(name = "first_step")
    private FirstStep firstStep;

    @Column(name = "wrong_codes")
    private int wrongCodes;

    protected SignInSession() {
    }

    SignInSession(String tokenHash, long id, Account account, FirstStep firstStep, Awaiting awaiting, Instant now, String address, String browser) {
        this.tokenHash = tokenHash;
        this.id = id;
        this.account = account;
        this.firstStep = firstStep;
        this.awaiting = awaiting;
        this.beganAt = now;
        this.seenAt = now;
        this.address = address;
        this.browser = browser;
    }

    boolean aliveAt(Instant now, Duration idle, Duration longest) {
        return awaiting == null && account.active() && now.isBefore(seenAt.plus(idle)) && now.isBefore(beganAt.plus(longest));
    }

    /** True while the second factor of this sign-in may still be given. */
    boolean waitingAt(Instant now) {
        return awaiting != null && account.active() && now.isBefore(beganAt.plus(TO_TYPE_A_CODE));
    }

    /** Notes use, at most once a minute so that reading pages does not mean writing. */
    void seen(Instant now) {
        if (now.isAfter(seenAt.plusSeconds(60))) {
            seenAt = now;
        }
    }

    /** Counts a wrong code and returns how many there were. */
    int wrongCode() {
        return ++wrongCodes;
    }

    Account account() {
        return account;
    }

    String tokenHash() {
        return tokenHash;
    }

    Awaiting awaiting() {
        return awaiting;
    }

    FirstStep firstStep() {
        return firstStep;
    }

    public Long id() {
        return id;
    }

    public Instant beganAt() {
        return beganAt;
    }

    public Instant seenAt() {
        return seenAt;
    }

    public String address() {
        return address;
    }

    public String browser() {
        return browser;
    }
}
