package org.steadwork.meeting;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;

/** A case on the agenda of a meeting, once somebody touched it there: its place, minutes, question, and what was said. */
@Entity
@Table(name = "meeting_case")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class AgendaCase {

    static final int LONGEST_NOTES = 8000;
    static final int LONGEST_QUESTION = 1000;

    @Id
    @GeneratedValue(generator = "meeting_case_seq")
    @SequenceGenerator(name = "meeting_case_seq", sequenceName = "meeting_case_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "meeting_id")
    private ReviewMeeting meeting;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private int place;

    private int minutes;

    private String question;

    @Column(columnDefinition = "text")
    private String notes;

    @Column(name = "guests_left")
    private boolean guestsLeft;

    @Column(name = "added_by")
    private String addedBy;

    @Column(name = "removed_by")
    private String removedBy;

    @Column(name = "removed_why")
    private String removedWhy;

    protected AgendaCase() {
    }

    /** @param place from 1; {@code minutes} in [1, 60] */
    AgendaCase(ReviewMeeting meeting, CaseFile caseFile, int place, int minutes) {
        this.meeting = meeting;
        this.caseFile = caseFile;
        stand(place, minutes);
    }

    final void stand(int at, int planned) {
        if (!(planned >= 1 && planned <= 60)) {
            throw new IllegalArgumentException("A case has 1 to 60 minutes, but was given " + planned);
        }
        place = at;
        minutes = planned;
    }

    /** Says what the treating clinician asks of the meeting; null for nothing yet. */
    void ask(String words) {
        question = words;
    }

    void note(String words) {
        notes = words;
    }

    void guestsLeft(boolean left) {
        guestsLeft = left;
    }

    /** Puts it on by hand, as when it was taken off before. */
    void add(String by) {
        addedBy = by;
        removedBy = null;
        removedWhy = null;
    }

    void remove(String by, String why) {
        removedBy = by;
        removedWhy = why;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public ReviewMeeting meeting() {
        return meeting;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public int place() {
        return place;
    }

    public int minutes() {
        return minutes;
    }

    public String question() {
        return question;
    }

    public String notes() {
        return notes;
    }

    /** True when the guests left the room for this case. */
    public boolean guestsLeft() {
        return guestsLeft;
    }

    public String addedBy() {
        return addedBy;
    }

    public boolean removed() {
        return removedBy != null;
    }

    public String removedBy() {
        return removedBy;
    }

    public String removedWhy() {
        return removedWhy;
    }
}
