package org.steadwork.ownpage;

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
import java.util.Objects;
import org.steadwork.exercise.Prescription;

/** One session of an exercise that the patient ticked as done. There is one for each exercise, day and slot, however often it is sent. */
@Entity
@Table(name = "session_tick")
public class SessionTick {

    @Id
    @GeneratedValue(generator = "session_tick_seq")
    @SequenceGenerator(name = "session_tick_seq", sequenceName = "session_tick_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "prescription_id")
    private Prescription prescription;

    @Column(name = "done_on")
    private LocalDate doneOn;

    private int slot;

    @Column(name = "pain_before")
    private Integer painBefore;

    @Column(name = "pain_after")
    private Integer painAfter;

    @Column(name = "taken_back")
    private boolean takenBack;

    private boolean alarm;

    @Enumerated(EnumType.STRING)
    private Meanwhile meanwhile;

    @Column(name = "received_at")
    private Instant receivedAt;

    @Column(name = "seen_by")
    private String seenBy;

    @Column(name = "seen_at")
    private Instant seenAt;

    protected SessionTick() {
    }

    public SessionTick(Prescription prescription, LocalDate doneOn, int slot, Instant receivedAt) {
        this.prescription = prescription;
        this.doneOn = doneOn;
        this.slot = slot;
        this.receivedAt = receivedAt;
    }

    /**
     * Takes what was said of the session; saying the same again changes nothing.
     *
     * @param before pain before it, [0, 10], or null
     * @param after  pain after it, [0, 10], or null
     * @param alarm  true when pain rose by more than measurement error
     */
    public void done(Integer before, Integer after, boolean alarm, Instant now) {
        if (!takenBack && Objects.equals(before, painBefore) && Objects.equals(after, painAfter)) {
            return;
        }
        if (alarm && !this.alarm) {
            seenAt = null;
            seenBy = null;
        }
        takenBack = false;
        painBefore = before;
        painAfter = after;
        this.alarm = alarm;
        receivedAt = now;
    }

    /** Marks a session of an exercise that was not to be done any more on its day. */
    void markAs(Meanwhile what) {
        meanwhile = what;
    }

    void takeBack() {
        takenBack = true;
        alarm = false;
    }

    void seen(String by, Instant at) {
        if (seenAt == null) {
            seenBy = by;
            seenAt = at;
        }
    }

    public Prescription prescription() {
        return prescription;
    }

    public LocalDate doneOn() {
        return doneOn;
    }

    public int slot() {
        return slot;
    }

    public Integer painBefore() {
        return painBefore;
    }

    public Integer painAfter() {
        return painAfter;
    }

    public Instant receivedAt() {
        return receivedAt;
    }

    public boolean takenBack() {
        return takenBack;
    }

    /** What had become of the exercise by then; null where it was given as usual. */
    public Meanwhile meanwhile() {
        return meanwhile;
    }

    public boolean alarm() {
        return alarm;
    }

    public boolean seen() {
        return seenAt != null;
    }
}
