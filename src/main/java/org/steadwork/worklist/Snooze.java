package org.steadwork.worklist;

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
import org.steadwork.account.Account;
import org.steadwork.casefile.Attention;
import org.steadwork.kernel.StaleVersionException;

/**
 * An entry of Today that somebody put off: until which day, why, and how bad it was then. It is written once and ended once, so the rows
 * of an entry are its trail.
 */
@Entity
@Table(name = "worklist_snooze")
public class Snooze {

    @Id
    @GeneratedValue(generator = "worklist_snooze_seq")
    @SequenceGenerator(name = "worklist_snooze_seq", sequenceName = "worklist_snooze_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "entry_id", updatable = false)
    private WorklistEntry entry;

    @Column(updatable = false)
    private String reason;

    @Column(name = "back_on", updatable = false)
    private LocalDate backOn;

    @Enumerated(EnumType.ORDINAL)
    @Column(updatable = false)
    private Attention.Urgency urgency;

    @Column(updatable = false)
    private int level;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "snoozed_by_id", updatable = false)
    private Account snoozedBy;

    @Column(name = "snoozed_at", updatable = false)
    private Instant snoozedAt;

    @Column(name = "ended_at")
    private Instant endedAt;

    @Column(name = "ended_by")
    private String endedBy;

    @Column(name = "ended_why")
    private String endedWhy;

    protected Snooze() {
    }

    /** @param backOn the day on which it stands on the list again */
    Snooze(WorklistEntry entry, LocalDate backOn, String reason, Account by, Instant now) {
        this.entry = entry;
        this.backOn = backOn;
        this.reason = reason;
        urgency = entry.urgency();
        level = entry.level();
        snoozedBy = by;
        snoozedAt = now;
        entry.putOff(backOn);
    }

    /** Ends it; {@code by} is null where no person did. */
    void end(Instant now, String by, String why) {
        if (!open()) {
            throw new IllegalStateException("This entry is on the list again already");
        }
        entry.onTheListAgain();
        endedAt = now;
        endedBy = by;
        endedWhy = why;
    }

    /** True when the entry is worse than it was when it was put off. */
    boolean becameWorse() {
        return entry.urgency().compareTo(urgency) < 0 || entry.urgency() == urgency && entry.level() > level;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public boolean open() {
        return endedAt == null;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public WorklistEntry entry() {
        return entry;
    }

    public String reason() {
        return reason;
    }

    public LocalDate backOn() {
        return backOn;
    }

    public Account snoozedBy() {
        return snoozedBy;
    }

    public Instant snoozedAt() {
        return snoozedAt;
    }

    public Instant endedAt() {
        return endedAt;
    }

    public String endedBy() {
        return endedBy;
    }

    public String endedWhy() {
        return endedWhy;
    }
}
