package org.steadwork.workplace;

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
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Site;

/** A room of a site, in which desks and chairs stand. */
@Entity
@Table(name = "room")
public class Room {

    @Id
    @GeneratedValue(generator = "room_seq")
    @SequenceGenerator(name = "room_seq", sequenceName = "room_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "site_id")
    private Site site;

    private String name;

    private String note;

    @Column(name = "retired_on")
    private LocalDate retiredOn;

    protected Room() {
    }

    public Room(Site site, String name) {
        this.site = site;
        this.name = name;
    }

    void isCalled(String newName, String newNote) {
        name = newName;
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

    public Site site() {
        return site;
    }

    public String name() {
        return name;
    }

    public String note() {
        return note;
    }

    public LocalDate retiredOn() {
        return retiredOn;
    }
}
