package org.steadwork.diary;

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
import java.time.LocalDate;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.kernel.StaleVersionException;

/** Time in which somebody, or with nobody named the whole clinic, sees nobody: leave, a course, a public holiday. */
@Entity
@Table(name = "clinic_leave")
class Leave {

    static final int LONGEST_WORDS = 120;

    @Id
    @GeneratedValue(generator = "clinic_leave_seq")
    @SequenceGenerator(name = "clinic_leave_seq", sequenceName = "clinic_leave_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Column(name = "first_on")
    private LocalDate firstOn;

    @Column(name = "last_on")
    private LocalDate lastOn;

    @Column(name = "from_minute")
    private Integer fromMinute;

    @Column(name = "to_minute")
    private Integer toMinute;

    private String words;

    protected Leave() {
    }

    /**
     * @param account whose leave it is, null for the whole clinic
     * @param part    the part of each day, null for whole days
     */
    Leave(Account account, LocalDate firstOn, LocalDate lastOn, Span part, String words) {
        take(account, firstOn, lastOn, part, words);
    }

    void take(Account account, LocalDate firstOn, LocalDate lastOn, Span part, String words) {
        if (lastOn.isBefore(firstOn)) {
            throw new IllegalArgumentException("Leave from " + firstOn + " cannot end on " + lastOn);
        }
        this.account = account;
        this.firstOn = firstOn;
        this.lastOn = lastOn;
        this.fromMinute = part == null ? null : part.from();
        this.toMinute = part == null ? null : part.to();
        this.words = words;
    }

    /** True when it concerns this clinician on this day; the clinic's concerns everybody, for whom null stands. */
    boolean concerns(Long clinicianId, LocalDate day) {
        return !day.isBefore(firstOn) && !day.isAfter(lastOn) && (account == null || account.id().equals(clinicianId));
    }

    Span span() {
        return fromMinute == null ? Span.wholeDay() : new Span(fromMinute, toMinute);
    }

    boolean clinic() {
        return account == null;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public Account account() {
        return account;
    }

    public LocalDate firstOn() {
        return firstOn;
    }

    public LocalDate lastOn() {
        return lastOn;
    }

    public String words() {
        return words;
    }

    /** At what times, in words. */
    public String times() {
        return fromMinute == null ? "all day" : ClinicTime.shown(fromMinute) + " to " + ClinicTime.shown(toMinute);
    }
}
