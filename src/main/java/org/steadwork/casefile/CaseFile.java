package org.steadwork.casefile;

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
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Patient;

/** One episode of care of one patient: the complaint, who treats it, when it was opened and closed. */
@Entity
@Table(name = "case_file")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class CaseFile {

    @Id
    @GeneratedValue(generator = "case_file_seq")
    @SequenceGenerator(name = "case_file_seq", sequenceName = "case_file_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "patient_id")
    private Patient patient;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "clinician_id")
    private Account clinician;

    private String complaint;

    @Column(name = "onset_on")
    private LocalDate onsetOn;

    @Column(name = "referred_by")
    private String referredBy;

    @Column(name = "referred_on")
    private LocalDate referredOn;

    private String history;

    @Column(name = "opened_on")
    private LocalDate openedOn;

    @Column(name = "closed_on")
    private LocalDate closedOn;

    @Enumerated(EnumType.STRING)
    @Column(name = "close_reason")
    private CloseReason closeReason;

    @Column(name = "close_note")
    private String closeNote;

    @Column(name = "next_review_on")
    private LocalDate nextReviewOn;

    protected CaseFile() {
    }

    /** Opens a case; {@code openedOn} is not before the patient's birth. */
    public CaseFile(Patient patient, Account clinician, String complaint, LocalDate onsetOn, LocalDate openedOn) {
        if (openedOn.isBefore(patient.birthDate())) {
            throw new IllegalArgumentException("A case cannot be opened on " + openedOn + ", before the patient was born");
        }
        this.patient = patient;
        this.clinician = clinician;
        this.openedOn = openedOn;
        describe(complaint, onsetOn, null, null);
    }

    /** @param onsetOn first day of the complaint, null when not known; between birth and opening */
    public void describe(String complaint, LocalDate onsetOn, String referredBy, String history) {
        if (onsetOn != null && (onsetOn.isAfter(openedOn) || onsetOn.isBefore(patient.birthDate()))) {
            throw new IllegalArgumentException("A complaint begins between birth and the opening of the case, but was " + onsetOn);
        }
        this.complaint = complaint;
        this.onsetOn = onsetOn;
        this.referredBy = referredBy;
        this.history = history;
    }

    /** @param day when the case was referred, null when not known; between birth and opening */
    public void referredOn(LocalDate day) {
        if (day != null && (day.isAfter(openedOn) || day.isBefore(patient.birthDate()))) {
            throw new IllegalArgumentException("A referral comes between birth and the opening of the case, but was " + day);
        }
        referredOn = day;
    }

    /** @param note what is still open and who holds it, may be null */
    public void close(LocalDate on, CloseReason reason, String note) {
        if (closedOn != null) {
            throw new IllegalStateException("Case " + id + " was already closed on " + closedOn);
        }
        if (on.isBefore(openedOn)) {
            throw new IllegalArgumentException("A case opened on " + openedOn + " cannot be closed earlier, on " + on);
        }
        closedOn = on;
        closeReason = reason;
        closeNote = note;
        nextReviewOn = null;
    }

    /** Opens a closed case again, as when the complaint returns within the same episode. */
    public void reopen() {
        if (closedOn == null) {
            throw new IllegalStateException("Case " + id + " is open");
        }
        closedOn = null;
        closeReason = null;
        closeNote = null;
    }

    /** Is treated by another clinician from now on. */
    void handOver(Account to) {
        if (to.id().equals(clinician.id())) {
            throw new IllegalArgumentException("The case is treated by account " + to.id() + " already");
        }
        clinician = to;
    }

    public void reviewOn(LocalDate day) {
        if (day != null && day.isBefore(openedOn)) {
            throw new IllegalArgumentException("A case opened on " + openedOn + " cannot be reviewed earlier, on " + day);
        }
        nextReviewOn = day;
    }

    public void requireVersion(int seen) {
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

    public Account clinician() {
        return clinician;
    }

    public String complaint() {
        return complaint;
    }

    public LocalDate onsetOn() {
        return onsetOn;
    }

    public String referredBy() {
        return referredBy;
    }

    /** Returns the day of the referral, or null. */
    public LocalDate referredOn() {
        return referredOn;
    }

    public String history() {
        return history;
    }

    public LocalDate openedOn() {
        return openedOn;
    }

    public LocalDate closedOn() {
        return closedOn;
    }

    public CloseReason closeReason() {
        return closeReason;
    }

    public String closeNote() {
        return closeNote;
    }

    public LocalDate nextReviewOn() {
        return nextReviewOn;
    }

    public boolean open() {
        return closedOn == null;
    }
}
