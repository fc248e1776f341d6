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

/** Somebody at an employer whom the clinic speaks with, beside the one who receives letters. */
@Entity
@Table(name = "employer_contact")
public class EmployerContact {

    @Id
    @GeneratedValue(generator = "employer_contact_seq")
    @SequenceGenerator(name = "employer_contact_seq", sequenceName = "employer_contact_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    private String name;

    private String role;

    private String phone;

    private String email;

    @Column(name = "retired_on")
    private LocalDate retiredOn;

    protected EmployerContact() {
    }

    public EmployerContact(Employer employer) {
        this.employer = employer;
    }

    public void is(String newName, String newRole, String newPhone, String newEmail) {
        name = newName;
        role = newRole;
        phone = newPhone;
        email = newEmail;
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

    public Employer employer() {
        return employer;
    }

    public String name() {
        return name;
    }

    public String role() {
        return role;
    }

    public String phone() {
        return phone;
    }

    public String email() {
        return email;
    }

    public LocalDate retiredOn() {
        return retiredOn;
    }
}
