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
import org.steadwork.account.Account;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Patient;

/**
 * The time booked for a visit. The visit is the record of the contact: its kind, its number and whether it took place stand there and
 * nowhere else. Somebody without a case has an appointment without a visit, which keeps the attendance until the case is opened.
 * It is live while it holds its time; a time given up may be taken by others.
 */
@Entity
@Table(name = "appointment")
class Appointment {

    @Id
    @GeneratedValue(generator = "appointment_seq")
    @SequenceGenerator(name = "appointment_seq", sequenceName = "appointment_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "patient_id")
    private Patient patient;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    @Enumerated(EnumType.STRING)
    @Column(name = "first_attendance")
    private Attendance firstAttendance;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "clinician_id")
    private Account clinician;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "room_id")
    private ClinicRoom room;

    @Column(name = "booked_on")
    private LocalDate day;

    @Column(name = "start_minute")
    private int start;

    private int minutes;

    private boolean live;

    @Column(name = "arrived_at")
    private Instant arrivedAt;

    @Enumerated(EnumType.STRING)
    @Column(name = "cancelled_by")
    private CancelledBy cancelledBy;

    @Column(name = "cancelled_at")
    private Instant cancelledAt;

    @Column(name = "exported_at")
    private Instant exportedAt;

    @Column(name = "exported_by")
    private String exportedBy;

    protected Appointment() {
    }

    /** @param visit the visit it is booked for; null when the patient has no case yet */
    Appointment(Patient patient, Visit visit, Place place) {
        this.patient = patient;
        this.visit = visit;
        this.firstAttendance = visit == null ? Attendance.PLANNED : null;
        stand(place);
    }

    /** Takes another place; who was reminded of the old one must be reminded again. */
    void stand(Place place) {
        clinician = place.clinician();
        room = place.room();
        day = place.day();
        start = place.start();
        minutes = place.minutes();
        exportedAt = null;
        exportedBy = null;
        live = true;
    }

    void giveUp() {
        live = false;
    }

    void attend(Attendance attendance) {
        if (visit == null) {
            firstAttendance = attendance;
        } else {
            visit.attended(attendance);
        }
    }

    void arrive(Instant at) {
        arrivedAt = at;
    }

    void cancelled(CancelledBy by, Instant at) {
        cancelledBy = by;
        cancelledAt = at;
    }

    /** Hangs the appointment on a visit, when the case of the patient was opened. */
    void belongTo(Visit visit) {
        this.visit = visit;
        this.firstAttendance = null;
    }

    void exported(String by, Instant at) {
        exportedBy = by;
        exportedAt = at;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    Place place() {
        return new Place(clinician, room, day, start, minutes);
    }

    Span span() {
        return new Span(start, start + minutes);
    }

    public Attendance attendance() {
        return visit == null ? firstAttendance : visit.attendance();
    }

    public VisitKind kind() {
        return visit == null ? VisitKind.INITIAL : visit.kind();
    }

    /** The case, or null when none is open yet. */
    public CaseFile caseFile() {
        return visit == null ? null : visit.caseFile();
    }

    /** Still to come: planned and holding its time. */
    public boolean toCome() {
        return live && attendance() == Attendance.PLANNED;
    }

    public boolean cancelled() {
        return attendance() == Attendance.CANCELLED || attendance() == Attendance.LATE_CANCELLED;
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

    public Visit visit() {
        return visit;
    }

    public Account clinician() {
        return clinician;
    }

    public ClinicRoom room() {
        return room;
    }

    public LocalDate day() {
        return day;
    }

    public int start() {
        return start;
    }

    public int minutes() {
        return minutes;
    }

    public boolean live() {
        return live;
    }

    public Instant arrivedAt() {
        return arrivedAt;
    }

    public CancelledBy cancelledBy() {
        return cancelledBy;
    }

    public Instant cancelledAt() {
        return cancelledAt;
    }

    public Instant exportedAt() {
        return exportedAt;
    }

    public String exportedBy() {
        return exportedBy;
    }

    public String from() {
        return ClinicTime.shown(start);
    }

    public String to() {
        return ClinicTime.shown(start + minutes);
    }
}
