package org.steadwork.people;

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

/** One place of work of an employer. */
@Entity
@Table(name = "site")
public class Site {

    @Id
    @GeneratedValue(generator = "site_seq")
    @SequenceGenerator(name = "site_seq", sequenceName = "site_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    private String name;

    private String address;

    @Column(name = "retired_on")
    private LocalDate retiredOn;

    protected Site() {
    }

    public Site(Employer employer, String name) {
        this.employer = employer;
        this.name = name;
    }

    public Long id() {
        return id;
    }

    public String name() {
        return name;
    }

    public Employer employer() {
        return employer;
    }

    public void standsAt(String newName, String newAddress) {
        name = newName;
        address = newAddress;
    }

    void retire(LocalDate on) {
        retiredOn = retiredOn == null ? on : retiredOn;
    }

    void bringBack() {
        retiredOn = null;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public int version() {
        return version;
    }

    public String address() {
        return address;
    }

    public LocalDate retiredOn() {
        return retiredOn;
    }
}
