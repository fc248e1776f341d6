package org.steadwork.worklist;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;

/** How far the list was brought up to date; its one row is held while somebody does it. */
@Entity
@Table(name = "worklist_state")
class WorklistState {

    static final int ONLY = 1;

    @Id
    private int id;

    @Column(name = "shown_on")
    private LocalDate shownOn;

    @Column(name = "whole_at")
    private Instant wholeAt;

    @Column(name = "last_event_id")
    private long lastEventId;

    protected WorklistState() {
    }

    void brought(LocalDate day, long lastEvent) {
        shownOn = day;
        lastEventId = lastEvent;
    }

    void lookedAtAll(Instant now) {
        wholeAt = now;
    }

    LocalDate shownOn() {
        return shownOn;
    }

    Instant wholeAt() {
        return wholeAt;
    }

    long lastEventId() {
        return lastEventId;
    }
}
