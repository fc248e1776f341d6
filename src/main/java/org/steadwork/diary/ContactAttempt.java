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
import java.time.Instant;
import org.steadwork.casefile.Visit;

/** One try to reach somebody who did not come. Written once, never changed. */
@Entity
@Table(name = "contact_attempt")
class ContactAttempt {

    static final String REACHED = "reached";

    @Id
    @GeneratedValue(generator = "contact_attempt_seq")
    @SequenceGenerator(name = "contact_attempt_seq", sequenceName = "contact_attempt_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "appointment_id")
    private Appointment appointment;

    @Column(name = "tried_at")
    private Instant triedAt;

    private String route;

    private String outcome;

    private String reason;

    @Column(name = "made_by")
    private String madeBy;

    protected ContactAttempt() {
    }

    /**
     * @param visit       the missed visit, or null when {@code appointment} is the missed one of somebody without a case
     * @param reason      why the patient did not come, null when nobody was asked
     */
    ContactAttempt(Visit visit, Appointment appointment, Instant triedAt, String route, String outcome, String reason, String madeBy) {
        if ((visit == null) == (appointment == null)) {
            throw new IllegalArgumentException("A contact follows one missed visit or one missed appointment");
        }
        this.visit = visit;
        this.appointment = appointment;
        this.triedAt = triedAt;
        this.route = route;
        this.outcome = outcome;
        this.reason = reason;
        this.madeBy = madeBy;
    }

    Visit visit() {
        return visit;
    }

    Appointment appointment() {
        return appointment;
    }

    public Instant triedAt() {
        return triedAt;
    }

    public String route() {
        return route;
    }

    public String outcome() {
        return outcome;
    }

    public String reason() {
        return reason;
    }

    public String madeBy() {
        return madeBy;
    }

    boolean reached() {
        return outcome.equals(REACHED);
    }
}
