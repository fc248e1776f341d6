package org.steadwork.meeting;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;

/**
 * A review meeting: when, who leads it, who writes, who takes part. Closing it adds {@link Minutes} that point at its version, so that
 * the database itself refuses any later change; every change in the meeting is therefore a new version of this row.
 */
@Entity
@Table(name = "review_meeting")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class ReviewMeeting {

    @Id
    @GeneratedValue(generator = "review_meeting_seq")
    @SequenceGenerator(name = "review_meeting_seq", sequenceName = "review_meeting_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Column(name = "held_on")
    private LocalDate heldOn;

    @Column(name = "starts_at")
    private String startsAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "chair_id")
    private Account chair;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "notes_id")
    private Account notes;

    @Column(name = "planned_by")
    private String plannedBy;

    @Column(name = "planned_at")
    private Instant plannedAt;

    @Column(name = "called_off_by")
    private String calledOffBy;

    @Column(name = "called_off_at")
    private Instant calledOffAt;

    @Column(name = "called_off_why")
    private String calledOffWhy;

    // each person is audited and names the meeting
    @NotAudited
    @OneToMany(mappedBy = "meeting", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("id")
    private List<MeetingPerson> people = new ArrayList<>();

    protected ReviewMeeting() {
    }

    ReviewMeeting(String plannedBy, Instant plannedAt) {
        this.plannedBy = plannedBy;
        this.plannedAt = plannedAt;
    }

    void plan(LocalDate day, LocalTime time, Account chairedBy, Account notesBy) {
        heldOn = day;
        startsAt = time.toString();
        chair = chairedBy;
        notes = notesBy;
    }

    /** Replaces who takes part; those who stay keep their row. */
    void attend(List<MeetingPerson> wanted) {
        people.removeIf(person -> wanted.stream().noneMatch(person::same));
        wanted.stream().filter(person -> people.stream().noneMatch(person::same)).forEach(people::add);
    }

    void callOff(String by, Instant at, String why) {
        if (calledOff()) {
            throw new IllegalStateException("Meeting " + id + " was called off already");
        }
        calledOffBy = by;
        calledOffAt = at;
        calledOffWhy = why;
    }

    public boolean calledOff() {
        return calledOffAt != null;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public LocalDate heldOn() {
        return heldOn;
    }

    public LocalTime startsAt() {
        return LocalTime.parse(startsAt);
    }

    public Account chair() {
        return chair;
    }

    public Account notes() {
        return notes;
    }

    public String calledOffBy() {
        return calledOffBy;
    }

    public String calledOffWhy() {
        return calledOffWhy;
    }

    public List<MeetingPerson> people() {
        return List.copyOf(people);
    }

    /** Those from outside the clinic. */
    public List<MeetingPerson> guests() {
        return people.stream().filter(MeetingPerson::guest).toList();
    }
}
