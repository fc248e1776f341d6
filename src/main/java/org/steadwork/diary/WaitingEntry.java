package org.steadwork.diary;

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
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Patient;

/** Somebody who waits for an earlier or any time. It ends when it is booked or taken off. */
@Entity
@Table(name = "waiting_entry")
class WaitingEntry {

    /** Who comes first; the order of the constants is the order. */
    enum Priority {
        SOON("Soon"), USUAL("Usual"), FLEXIBLE("Can wait");

        private final String label;

        Priority(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(generator = "waiting_entry_seq")
    @SequenceGenerator(name = "waiting_entry_seq", sequenceName = "waiting_entry_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "patient_id")
    private Patient patient;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Enumerated(EnumType.STRING)
    private VisitKind kind;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "clinician_id")
    private Account clinician;

    @Column(name = "earliest_on")
    private LocalDate earliestOn;

    @Column(name = "latest_on")
    private LocalDate latestOn;

    private String times;

    @Enumerated(EnumType.STRING)
    private Priority priority;

    @Column(name = "since_on")
    private LocalDate sinceOn;

    @Column(name = "added_by")
    private String addedBy;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "appointment_id")
    private Appointment appointment;

    @Column(name = "ended_at")
    private Instant endedAt;

    protected WaitingEntry() {
    }

    /** @param caseFile null for somebody without an open case */
    WaitingEntry(Patient patient, CaseFile caseFile, LocalDate sinceOn, String addedBy) {
        this.patient = patient;
        this.caseFile = caseFile;
        this.sinceOn = sinceOn;
        this.addedBy = addedBy;
    }

    /**
     * @param clinician null for any
     * @param latestOn  null for no end
     * @param times     keys of the parts of the day preferred, empty for any
     */
    void want(VisitKind kind, Account clinician, LocalDate earliestOn, LocalDate latestOn, List<String> times, Priority priority) {
        this.kind = kind;
        this.clinician = clinician;
        this.earliestOn = earliestOn;
        this.latestOn = latestOn;
        this.times = String.join(" ", times);
        this.priority = priority;
    }

    void serve(Appointment appointment, Instant at) {
        this.appointment = appointment;
        this.endedAt = at;
    }

    void takeOff(Instant at) {
        endedAt = at;
    }

    void waitAgain() {
        appointment = null;
        endedAt = null;
    }

    boolean wants(LocalDate day, long clinicianId) {
        return !day.isBefore(earliestOn) && (latestOn == null || !day.isAfter(latestOn)) && (clinician == null || clinician.id() == clinicianId);
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

    public Patient patient() {
        return patient;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public VisitKind kind() {
        return kind;
    }

    public Account clinician() {
        return clinician;
    }

    public LocalDate earliestOn() {
        return earliestOn;
    }

    public LocalDate latestOn() {
        return latestOn;
    }

    public List<String> times() {
        return times.isEmpty() ? List.of() : List.of(times.split(" "));
    }

    public Priority priority() {
        return priority;
    }

    public LocalDate sinceOn() {
        return sinceOn;
    }

    public boolean ended() {
        return endedAt != null;
    }

    Appointment appointment() {
        return appointment;
    }
}
