package org.steadwork.casefile;

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
import org.steadwork.account.Account;
import org.steadwork.kernel.StaleVersionException;

/** A clinician's decision about two cards of the map, symptom to finding or finding to action, with the reason. One a pair. */
@Entity
@Table(name = "case_link")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Link {

    /** Longest reason, in characters. */
    public static final int LONGEST_REASON = 500;

    @Id
    @GeneratedValue(generator = "case_link_seq")
    @SequenceGenerator(name = "case_link_seq", sequenceName = "case_link_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Enumerated(EnumType.STRING)
    @Column(name = "from_kind")
    private CardKind fromKind;

    @Column(name = "from_ref")
    private String fromRef;

    @Column(name = "from_title")
    private String fromTitle;

    @Enumerated(EnumType.STRING)
    @Column(name = "to_kind")
    private CardKind toKind;

    @Column(name = "to_ref")
    private String toRef;

    @Column(name = "to_title")
    private String toTitle;

    @Enumerated(EnumType.STRING)
    private LinkDecision decision;

    private String reason;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "decided_by")
    private Account decidedBy;

    @Column(name = "decided_at")
    private Instant decidedAt;

    protected Link() {
    }

    /**
     * Begins a link; {@link #decide} completes it.
     *
     * @param fromTitle what the card was called when the link was made, so that it can be read when the card is gone
     */
    public Link(CaseFile caseFile, CardKey from, String fromTitle, CardKey to, String toTitle) {
        if (!joins(from.kind(), to.kind())) {
            throw new IllegalArgumentException("A link goes from a symptom to a finding or from a finding to an action, not from "
                    + from.kind() + " to " + to.kind());
        }
        this.caseFile = caseFile;
        fromKind = from.kind();
        fromRef = from.ref();
        this.fromTitle = fromTitle;
        toKind = to.kind();
        toRef = to.ref();
        this.toTitle = toTitle;
    }

    public static boolean joins(CardKind from, CardKind to) {
        return from == CardKind.SYMPTOM && to == CardKind.FINDING || from == CardKind.FINDING && to == CardKind.ACTION;
    }

    /** Decides, or decides anew; the earlier decision stays in the history. */
    public void decide(LinkDecision decision, String reason, Account by, Instant at) {
        if (reason == null || reason.isBlank() || reason.length() > LONGEST_REASON) {
            throw new IllegalArgumentException("A decision has a reason of 1 to " + LONGEST_REASON + " characters");
        }
        this.decision = decision;
        this.reason = reason;
        this.decidedBy = by;
        this.decidedAt = at;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public boolean between(CardKey from, CardKey to) {
        return from().equals(from) && to().equals(to);
    }

    public boolean confirmed() {
        return decision == LinkDecision.CONFIRMED;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public CardKey from() {
        return new CardKey(fromKind, fromRef);
    }

    public String fromTitle() {
        return fromTitle;
    }

    public CardKey to() {
        return new CardKey(toKind, toRef);
    }

    public String toTitle() {
        return toTitle;
    }

    public LinkDecision decision() {
        return decision;
    }

    public String reason() {
        return reason;
    }

    public Account decidedBy() {
        return decidedBy;
    }

    public Instant decidedAt() {
        return decidedAt;
    }
}
