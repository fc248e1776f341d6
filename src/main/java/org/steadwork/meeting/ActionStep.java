package org.steadwork.meeting;

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
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;

/** What became of an action: done, dropped with a reason, or opened again with one. Written once, never changed. */
@Entity
@Immutable
@Table(name = "meeting_action_step")
class ActionStep {

    enum State {
        DONE("Done"), DROPPED("Dropped"), OPEN("Opened again");

        private final String label;

        State(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(generator = "meeting_action_step_seq")
    @SequenceGenerator(name = "meeting_action_step_seq", sequenceName = "meeting_action_step_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "action_id")
    private MeetingAction action;

    private int number;

    @Enumerated(EnumType.STRING)
    private State state;

    private String reason;

    @Column(name = "happened_on")
    private LocalDate happenedOn;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected ActionStep() {
    }

    /** @param reason may be null only for what is done */
    ActionStep(MeetingAction action, State state, String reason, LocalDate happenedOn, String recordedBy, Instant recordedAt) {
        if (state != State.DONE && reason == null) {
            throw new IllegalArgumentException("An action is dropped or opened again with a reason");
        }
        if (action.open() == (state == State.OPEN)) {
            throw new IllegalStateException("Action " + action.id() + " is " + (action.open() ? "open" : "ended") + " already");
        }
        this.action = action;
        this.number = action.steps().size() + 1;
        this.state = state;
        this.reason = reason;
        this.happenedOn = happenedOn;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    public State state() {
        return state;
    }

    public String reason() {
        return reason;
    }

    public LocalDate happenedOn() {
        return happenedOn;
    }

    public String recordedBy() {
        return recordedBy;
    }
}
