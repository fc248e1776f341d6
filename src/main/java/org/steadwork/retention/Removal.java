package org.steadwork.retention;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;

/** That a person's record was removed; the number is the one the audit trail goes on naming. */
@Entity
@Table(name = "person_removal")
public class Removal {

    @Id
    @GeneratedValue(generator = "person_removal_seq")
    @SequenceGenerator(name = "person_removal_seq", sequenceName = "person_removal_seq", allocationSize = 1)
    private Long id;

    @Column(name = "patient_number")
    private long patientNumber;

    @Column(name = "removed_at")
    private Instant removedAt;

    @Column(name = "removed_by")
    private String removedBy;

    @Enumerated(EnumType.STRING)
    private RemovalGround ground;

    @Column(name = "rows_removed")
    private long rowsRemoved;

    protected Removal() {
    }

    Removal(long patientNumber, Instant removedAt, String removedBy, RemovalGround ground, long rowsRemoved) {
        this.patientNumber = patientNumber;
        this.removedAt = removedAt;
        this.removedBy = removedBy;
        this.ground = ground;
        this.rowsRemoved = rowsRemoved;
    }

    public long patientNumber() {
        return patientNumber;
    }

    public Instant removedAt() {
        return removedAt;
    }

    public String removedBy() {
        return removedBy;
    }

    public String ground() {
        return ground.label();
    }

    public long rowsRemoved() {
        return rowsRemoved;
    }
}
