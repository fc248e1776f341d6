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
import java.util.Objects;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;

/** Somebody who takes part in a meeting: an account of the clinic, or a guest by name and role who may stand for somebody on record. */
@Entity
@Table(name = "meeting_person")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class MeetingPerson {

    @Id
    @GeneratedValue(generator = "meeting_person_seq")
    @SequenceGenerator(name = "meeting_person_seq", sequenceName = "meeting_person_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "meeting_id")
    private ReviewMeeting meeting;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    private String name;

    @Column(name = "role_words")
    private String role;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "correspondent_id")
    private Correspondent correspondent;

    protected MeetingPerson() {
    }

    private MeetingPerson(ReviewMeeting meeting, Account account, String name, String role, Employer employer, Correspondent correspondent) {
        this.meeting = meeting;
        this.account = account;
        this.name = name;
        this.role = role;
        this.employer = employer;
        this.correspondent = correspondent;
    }

    static MeetingPerson of(ReviewMeeting meeting, Account account) {
        return new MeetingPerson(meeting, account, null, null, null, null);
    }

    /** @param employer whom the guest stands for, or null; {@code correspondent} likewise */
    static MeetingPerson guest(ReviewMeeting meeting, String name, String role, Employer employer, Correspondent correspondent) {
        return new MeetingPerson(meeting, null, name, role, employer, correspondent);
    }

    boolean same(MeetingPerson other) {
        return Objects.equals(key(), other.key());
    }

    private String key() {
        return account != null ? "account " + account.id() : name + "\n" + role + "\n" + standsFor();
    }

    /** Names in forms whom the guest stands for: {@code employer-3}, {@code correspondent-7}, or blank for nobody on record. */
    String standsFor() {
        return employer != null ? "employer-" + employer.id() : correspondent != null ? "correspondent-" + correspondent.id() : "";
    }

    public boolean guest() {
        return account == null;
    }

    public Account account() {
        return account;
    }

    public String name() {
        return account == null ? name : account.displayName();
    }

    /** The role of a guest, or of an account its profession; may be null. */
    public String role() {
        return account == null ? role : account.profession();
    }

    public Employer employer() {
        return employer;
    }

    public Correspondent correspondent() {
        return correspondent;
    }

    /** Name and role in a line. */
    public String words() {
        return role() == null ? name() : name() + ", " + role();
    }
}
