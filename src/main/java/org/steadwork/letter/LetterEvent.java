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
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;

/** Something that happened with a letter: the worker saw a version of it and answered, or it was sent. */
@Entity
@Immutable
@Table(name = "letter_event")
class LetterEvent {

    enum Kind {
        AGREED("Shown to the worker: agreed"), DECLINED_TO_SEE("Offered to the worker: need not see it"),
        CHANGES_ASKED("Shown to the worker: asked for changes"), DISAGREED("Shown to the worker: disagrees"), SENT("Sent"),
        COPY_TO_WORKER("Copy given to the worker"), ANSWERED("Answer received"), NO_ANSWER("No answer waited for any more");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        /** True for what can only happen to a signed letter. */
        boolean afterSigning() {
            return ordinal() >= SENT.ordinal();
        }
    }

    @Id
    @GeneratedValue(generator = "letter_event_seq")
    @SequenceGenerator(name = "letter_event_seq", sequenceName = "letter_event_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "letter_id")
    private Letter letter;

    @Column(name = "letter_version")
    private int letterVersion;

    @Enumerated(EnumType.STRING)
    private Kind kind;

    @Column(name = "happened_on")
    private LocalDate happenedOn;

    private String how;

    private String note;

    @Column(name = "reply_by")
    private LocalDate replyBy;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "recorded_by_id")
    private Account recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected LetterEvent() {
    }

    LetterEvent(Letter letter, Kind kind, LocalDate happenedOn, String how, String note, Account recordedBy, Instant recordedAt) {
        this.letter = letter;
        this.letterVersion = letter.version();
        this.kind = kind;
        this.happenedOn = happenedOn;
        this.how = how;
        this.note = note;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    /** Notes the day by which an answer is hoped for. */
    LetterEvent answerBy(LocalDate day) {
        replyBy = day;
        return this;
    }

    /** Returns the day by which an answer is hoped for, or null. */
    public LocalDate replyBy() {
        return replyBy;
    }

    Letter letter() {
        return letter;
    }

    public int letterVersion() {
        return letterVersion;
    }

    public Kind kind() {
        return kind;
    }

    public LocalDate happenedOn() {
        return happenedOn;
    }

    public String how() {
        return how;
    }

    public String note() {
        return note;
    }

    public Account recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }
}
