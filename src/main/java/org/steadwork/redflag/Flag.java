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
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.redflag.rules.Raised;
import org.steadwork.redflag.rules.Urgency;

/** A raised question or rule. It holds until a named clinician closes it with a reason; no later answer closes it. */
@Entity
@Table(name = "red_flag")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Flag {

    @Id
    @GeneratedValue(generator = "red_flag_seq")
    @SequenceGenerator(name = "red_flag_seq", sequenceName = "red_flag_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "screen_id")
    private RedFlagScreen screen;

    private String origin;

    private String name;

    @Column(name = "points_to")
    private String pointsTo;

    private String action;

    private String suspends;

    private boolean certain;

    @Enumerated(EnumType.STRING)
    @Column(name = "found_urgency")
    private Urgency foundUrgency;

    @Enumerated(EnumType.STRING)
    private Urgency urgency;

    @Column(name = "raised_at")
    private Instant raisedAt;

    @Column(name = "urgency_since")
    private Instant urgencySince;

    @Column(name = "urgency_reason")
    private String urgencyReason;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "urgency_by_id")
    private Account urgencyBy;

    @Column(name = "closed_at")
    private Instant closedAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "closed_by_id")
    private Account closedBy;

    @Column(name = "close_reason")
    private String closeReason;

    @Column(name = "seen_by")
    private String seenBy;

    @Column(name = "seen_on")
    private LocalDate seenOn;

    private String result;

    protected Flag() {
    }

    Flag(RedFlagScreen screen, Raised raised, Instant now) {
        this.caseFile = screen.caseFile();
        this.screen = screen;
        this.origin = raised.origin();
        this.name = raised.name();
        this.pointsTo = raised.pointsTo();
        this.action = raised.action();
        this.suspends = Words.join(raised.suspends());
        this.certain = raised.certain();
        this.foundUrgency = raised.urgency();
        this.urgency = raised.urgency();
        this.raisedAt = now;
        this.urgencySince = now;
    }

    /**
     * Takes over what a later evaluation found: a flag only gains. A level that a clinician lowered rises when the answers got
     * worse; an unknown answer that became a sure one is worse, and what was done about the unknown one does not count for it.
     */
    void foundAgain(RedFlagScreen in, Raised raised, Instant now) {
        requireOpen();
        screen = in;
        boolean becameSure = !certain && raised.certain();
        certain |= raised.certain();
        Set<String> tokens = new LinkedHashSet<>(suspends());
        tokens.addAll(raised.suspends());
        suspends = Words.join(tokens);
        boolean rose = raised.urgency().compareTo(foundUrgency) > 0;
        if (rose) {
            foundUrgency = raised.urgency();
        }
        if ((rose || becameSure) && raised.urgency().compareTo(urgency) > 0) {
            urgency = raised.urgency();
            urgencyReason = null;
            urgencyBy = null;
            urgencySince = now;
        }
        if (becameSure) {
            urgencySince = now;
        }
    }

    /** Raises the level; a reason is welcome and not asked for. */
    public void raiseTo(Urgency level, String reason, Account clinician, Instant now) {
        requireOpen();
        if (level.compareTo(urgency) <= 0) {
            throw new IllegalArgumentException("Raising goes up, not from " + urgency + " to " + level);
        }
        level(level, reason, clinician);
        urgencySince = now;
    }

    /** Lowers the level; without a written reason it is refused. */
    public void lowerTo(Urgency level, String reason, Account clinician) {
        requireOpen();
        if (level.compareTo(urgency) >= 0) {
            throw new IllegalArgumentException("Lowering goes down, not from " + urgency + " to " + level);
        }
        level(level, Objects.requireNonNull(reason, "lowering the level needs a reason"), clinician);
    }

    private void level(Urgency level, String reason, Account clinician) {
        urgency = level;
        urgencyReason = reason;
        urgencyBy = clinician;
    }

    /** @param seenBy who saw the patient; {@code result} may be null */
    public void close(Account clinician, String reason, String seenBy, LocalDate seenOn, String result, Instant now) {
        requireOpen();
        this.closedBy = Objects.requireNonNull(clinician, "a flag is closed by somebody with a name");
        this.closeReason = Objects.requireNonNull(reason, "closing needs a reason");
        this.seenBy = Objects.requireNonNull(seenBy, "closing needs who saw the patient");
        this.seenOn = Objects.requireNonNull(seenOn, "closing needs a date");
        this.result = result;
        this.closedAt = now;
    }

    private void requireOpen() {
        if (!open()) {
            throw new IllegalStateException("Flag " + id + " is closed");
        }
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    /** True for a level that demands a call, until one has been recorded since the flag came to that level, or became sure at it. */
    public boolean waitsForCall(Instant latestCall) {
        return open() && urgency.demandsCall() && (latestCall == null || latestCall.isBefore(urgencySince));
    }

    /** True for an open flag of two weeks or more urgent, until somebody called took the patient over since it came to that level. */
    boolean holdsDischarge(Instant latestAccepted) {
        return open() && urgency.atLeast(Urgency.URGENT_2_WEEKS) && (latestAccepted == null || latestAccepted.isBefore(urgencySince));
    }

    public boolean open() {
        return closedAt == null;
    }

    /** True when it was raised by the end of a day and not closed by then. */
    boolean openOn(LocalDate day) {
        return !LocalDate.ofInstant(raisedAt, ZoneId.systemDefault()).isAfter(day)
                && (open() || LocalDate.ofInstant(closedAt, ZoneId.systemDefault()).isAfter(day));
    }

    public boolean lowered() {
        return urgency.compareTo(foundUrgency) < 0;
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

    public RedFlagScreen screen() {
        return screen;
    }

    public String origin() {
        return origin;
    }

    public String name() {
        return name;
    }

    public String pointsTo() {
        return pointsTo;
    }

    public String action() {
        return action;
    }

    public Set<String> suspends() {
        return Words.split(suspends);
    }

    /** False where the flag rests on an answer of "unknown". */
    public boolean certain() {
        return certain;
    }

    public Urgency foundUrgency() {
        return foundUrgency;
    }

    public Urgency urgency() {
        return urgency;
    }

    public Instant raisedAt() {
        return raisedAt;
    }

    public String urgencyReason() {
        return urgencyReason;
    }

    public Account urgencyBy() {
        return urgencyBy;
    }

    public Instant closedAt() {
        return closedAt;
    }

    public Account closedBy() {
        return closedBy;
    }

    public String closeReason() {
        return closeReason;
    }

    public String seenBy() {
        return seenBy;
    }

    public LocalDate seenOn() {
        return seenOn;
    }

    public String result() {
        return result;
    }
}
