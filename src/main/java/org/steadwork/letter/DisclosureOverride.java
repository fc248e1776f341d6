package org.steadwork.letter;

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
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;
import org.steadwork.letter.disclosure.Ground;

/** The record of acting without consent in one letter: minimum facts, a named person, a ground, and whether the worker knows. */
@Entity
@Immutable
@Table(name = "disclosure_override")
class DisclosureOverride {

    @Id
    @GeneratedValue(generator = "disclosure_override_seq")
    @SequenceGenerator(name = "disclosure_override_seq", sequenceName = "disclosure_override_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "letter_id")
    private Letter letter;

    @Enumerated(EnumType.STRING)
    private Ground ground;

    @Column(name = "decided_by")
    private String decidedBy;

    @Column(name = "ground_text")
    private String groundText;

    private String what;

    @Column(name = "why_no_consent")
    private String whyNoConsent;

    @Column(name = "worker_told")
    private String workerTold;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "recorded_by_id")
    private Account recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected DisclosureOverride() {
    }

    DisclosureOverride(Letter letter, Ground ground, Words words, Account recordedBy, Instant recordedAt) {
        this.letter = letter;
        this.ground = ground;
        this.decidedBy = words.decidedBy();
        this.groundText = words.groundText();
        this.what = words.what();
        this.whyNoConsent = words.whyNoConsent();
        this.workerTold = words.workerTold();
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    /** The five answers an override needs, none of them blank. */
    record Words(String decidedBy, String groundText, String what, String whyNoConsent, String workerTold) {
    }

    public Ground ground() {
        return ground;
    }

    public String decidedBy() {
        return decidedBy;
    }

    public String groundText() {
        return groundText;
    }

    public String what() {
        return what;
    }

    public String whyNoConsent() {
        return whyNoConsent;
    }

    public String workerTold() {
        return workerTold;
    }

    public Account recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }
}
