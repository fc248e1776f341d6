package org.steadwork.workplace;

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
import org.steadwork.kernel.StaleVersionException;

/** A desk or a chair of the register; its sizes stand beside it, each with how and when it was known. */
@Entity
@Table(name = "furniture")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Furniture {

    @Id
    @GeneratedValue(generator = "furniture_seq")
    @SequenceGenerator(name = "furniture_seq", sequenceName = "furniture_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "room_id")
    private Room room;

    @Enumerated(EnumType.STRING)
    private FurnitureKind kind;

    private String name;

    @Column(name = "stands_on_it")
    private String standsOnIt;

    private String note;

    @Column(name = "retired_on")
    private LocalDate retiredOn;

    protected Furniture() {
    }

    public Furniture(Room room, FurnitureKind kind, String name) {
        this.room = room;
        this.kind = kind;
        this.name = name;
    }

    /** @param newStandsOnIt screens, keyboard, papers; null when not noted */
    public void is(String newName, String newStandsOnIt, String newNote) {
        name = newName;
        standsOnIt = newStandsOnIt;
        note = newNote;
    }

    void retire(LocalDate on) {
        retiredOn = retiredOn == null ? on : retiredOn;
    }

    void bringBack() {
        retiredOn = null;
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

    public Room room() {
        return room;
    }

    public FurnitureKind kind() {
        return kind;
    }

    public boolean desk() {
        return kind == FurnitureKind.DESK;
    }

    public String name() {
        return name;
    }

    /** Returns where it stands and what it is called: site, room, name. */
    public String place() {
        return room.site().name() + ", " + room.name() + ", " + name;
    }

    public String standsOnIt() {
        return standsOnIt;
    }

    public String note() {
        return note;
    }

    public LocalDate retiredOn() {
        return retiredOn;
    }
}
