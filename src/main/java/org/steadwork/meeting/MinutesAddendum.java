package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;

/** What is added to closed minutes later, as a correction. Written once, never changed. */
@Entity
@Immutable
@Table(name = "meeting_addendum")
class MinutesAddendum {

    @Id
    @GeneratedValue(generator = "meeting_addendum_seq")
    @SequenceGenerator(name = "meeting_addendum_seq", sequenceName = "meeting_addendum_seq", allocationSize = 1)
    private Long id;

    @Column(name = "meeting_id")
    private Long meetingId;

    @Column(columnDefinition = "text")
    private String words;

    @Column(name = "written_by")
    private String writtenBy;

    @Column(name = "written_at")
    private Instant writtenAt;

    protected MinutesAddendum() {
    }

    MinutesAddendum(Minutes minutes, String words, String writtenBy, Instant writtenAt) {
        this.meetingId = minutes.meetingId();
        this.words = words;
        this.writtenBy = writtenBy;
        this.writtenAt = writtenAt;
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
