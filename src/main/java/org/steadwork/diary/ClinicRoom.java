package org.steadwork.diary;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.steadwork.kernel.StaleVersionException;

/** A room of the clinic in which patients are seen. One out of use is kept for what was booked in it. */
@Entity
@Table(name = "clinic_room")
class ClinicRoom {

    static final int LONGEST_NAME = 60;

    @Id
    @GeneratedValue(generator = "clinic_room_seq")
    @SequenceGenerator(name = "clinic_room_seq", sequenceName = "clinic_room_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    private String name;

    @Column(name = "in_use")
    private boolean inUse = true;

    protected ClinicRoom() {
    }

    ClinicRoom(String name) {
        this.name = name;
    }

    void describe(String name, boolean inUse) {
        this.name = name;
        this.inUse = inUse;
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

    public String name() {
        return name;
    }

    public boolean inUse() {
        return inUse;
    }
}
