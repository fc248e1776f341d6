package org.steadwork.ownpage;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;

/** One phone that gave the right date of birth. Its cookie holds a random token; only the SHA-256 is stored. */
@Entity
@Table(name = "own_visit")
public class OwnVisit {

    static final Duration LONGEST = Duration.ofHours(12);

    @Id
    @Column(name = "token_hash")
    private String tokenHash;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "link_id")
    private OwnLink link;

    @Column(name = "began_at")
    private Instant beganAt;

    protected OwnVisit() {
    }

    OwnVisit(String tokenHash, OwnLink link, Instant beganAt) {
        this.tokenHash = tokenHash;
        this.link = link;
        this.beganAt = beganAt;
    }

    OwnLink link() {
        return link;
    }

    boolean aliveAt(Instant now) {
        return now.isBefore(beganAt.plus(LONGEST));
    }
}
