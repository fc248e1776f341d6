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
import java.time.Instant;
import java.time.LocalDate;
import org.steadwork.account.Account;
import org.steadwork.casefile.Attendance;

/** One thing done with an appointment, by whom, with all that stood before, so that it can be undone. Lines are added, never changed but for their undoing. */
@Entity
@Table(name = "appointment_change")
class AppointmentChange {

    @Id
    @GeneratedValue(generator = "appointment_change_seq")
    @SequenceGenerator(name = "appointment_change_seq", sequenceName = "appointment_change_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "appointment_id")
    private Appointment appointment;

    @Enumerated(EnumType.STRING)
    private Act act;

    @Column(name = "made_at")
    private Instant madeAt;

    @Column(name = "made_by")
    private String madeBy;

    private boolean undone;

    @Column(name = "made_visit")
    private boolean madeVisit;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "was_clinician_id")
    private Account wasClinician;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "was_room_id")
    private ClinicRoom wasRoom;

    @Column(name = "was_on")
    private LocalDate wasOn;

    @Column(name = "was_start_minute")
    private int wasStart;

    @Column(name = "was_minutes")
    private int wasMinutes;

    @Column(name = "was_live")
    private boolean wasLive;

    @Enumerated(EnumType.STRING)
    @Column(name = "was_attendance")
    private Attendance wasAttendance;

    @Column(name = "was_arrived_at")
    private Instant wasArrivedAt;

    @Enumerated(EnumType.STRING)
    @Column(name = "was_cancelled_by")
    private CancelledBy wasCancelledBy;

    @Column(name = "was_cancelled_at")
    private Instant wasCancelledAt;

    protected AppointmentChange() {
    }

    /** Notes how the appointment stands now, before the act. */
    AppointmentChange(Appointment appointment, Act act, String madeBy, Instant madeAt) {
        this.appointment = appointment;
        this.act = act;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
        wasClinician = appointment.clinician();
        wasRoom = appointment.room();
        wasOn = appointment.day();
        wasStart = appointment.start();
        wasMinutes = appointment.minutes();
        wasLive = appointment.live();
        wasAttendance = appointment.attendance();
        wasArrivedAt = appointment.arrivedAt();
        wasCancelledBy = appointment.cancelledBy();
        wasCancelledAt = appointment.cancelledAt();
    }

    /** A booking: before it nothing was held. */
    static AppointmentChange booking(Appointment appointment, boolean madeVisit, String madeBy, Instant madeAt) {
        AppointmentChange change = new AppointmentChange(appointment, Act.BOOKED, madeBy, madeAt);
        change.wasLive = false;
        change.madeVisit = madeVisit;
        return change;
    }

    void undo() {
        undone = true;
    }

    Place wasPlace() {
        return new Place(wasClinician, wasRoom, wasOn, wasStart, wasMinutes);
    }

    public Act act() {
        return act;
    }

    public Instant madeAt() {
        return madeAt;
    }

    public String madeBy() {
        return madeBy;
    }

    public boolean undone() {
        return undone;
    }

    boolean madeVisit() {
        return madeVisit;
    }

    boolean wasLive() {
        return wasLive;
    }

    Attendance wasAttendance() {
        return wasAttendance;
    }

    Instant wasArrivedAt() {
        return wasArrivedAt;
    }

    CancelledBy wasCancelledBy() {
        return wasCancelledBy;
    }

    Instant wasCancelledAt() {
        return wasCancelledAt;
    }

    /** What was done, in words. */
    public String words() {
        Place was = wasPlace();
        return act == Act.MOVED ? "Moved from " + DiaryWords.place(was) : act.label();
    }
}
