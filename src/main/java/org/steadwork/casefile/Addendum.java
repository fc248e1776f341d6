package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;

/** What is added to a signed note later. It is written once and never changed, so it needs no history. */
@Entity
@Immutable
@Table(name = "addendum")
public class Addendum {

    @Id
    @GeneratedValue(generator = "addendum_seq")
    @SequenceGenerator(name = "addendum_seq", sequenceName = "addendum_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_note_id")
    private VisitNote note;

    @Column(columnDefinition = "text")
    private String words;

    @Column(name = "written_by")
    private String writtenBy;

    @Column(name = "written_at")
    private Instant writtenAt;

    protected Addendum() {
    }

    /** Writes an addendum under a signed note; a draft is edited instead. */
    public Addendum(VisitNote note, String words, String writtenBy, Instant writtenAt) {
        if (!note.signed()) {
            throw new IllegalStateException("A draft is edited; an addendum stands under a signed note");
        }
        this.note = note;
        this.words = words;
        this.writtenBy = writtenBy;
        this.writtenAt = writtenAt;
    }

    public VisitNote note() {
        return note;
    }

    public String words() {
        return words;
    }

    public String writtenBy() {
        return writtenBy;
    }

    public Instant writtenAt() {
        return writtenAt;
    }
}
