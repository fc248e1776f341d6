package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;
import org.steadwork.letter.pdf.LetterPdf;

/** The minutes of a meeting as it was closed: the words, the file, its fingerprint. Never changed; a correction is an addendum. */
@Entity
@Immutable
@Table(name = "meeting_minutes")
class Minutes {

    @Id
    @Column(name = "meeting_id")
    private Long meetingId;

    @Column(name = "meeting_version")
    private int meetingVersion;

    @Column(columnDefinition = "text")
    private String words;

    private byte[] pdf;

    private int pages;

    private String sha256;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "closed_by_id")
    private Account closedBy;

    @Column(name = "closed_at")
    private Instant closedAt;

    protected Minutes() {
    }

    /** Closes one version of a meeting. */
    Minutes(ReviewMeeting meeting, String words, LetterPdf file, Account closedBy, Instant closedAt) {
        this.meetingId = meeting.id();
        this.meetingVersion = meeting.version();
        this.words = words;
        this.pdf = file.bytes().clone();
        this.pages = file.pages();
        this.sha256 = file.sha256();
        this.closedBy = closedBy;
        this.closedAt = closedAt;
    }

    /** True when the file still has the fingerprint it was closed with. */
    boolean untouched() {
        return LetterPdf.sha256(pdf).equals(sha256);
    }

    byte[] pdf() {
        return pdf.clone();
    }

    public Long meetingId() {
        return meetingId;
    }

    public String words() {
        return words;
    }

    public int pages() {
        return pages;
    }

    public String sha256() {
        return sha256;
    }

    public Account closedBy() {
        return closedBy;
    }

    public Instant closedAt() {
        return closedAt;
    }
}
