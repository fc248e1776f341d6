package org.steadwork.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import org.steadwork.kernel.StaleVersionException;

/** Who a patient works for, with the person there who receives reports. */
@Entity
@Table(name = "employer")
public class Employer {

    @Id
    @GeneratedValue(generator = "employer_seq")
    @SequenceGenerator(name = "employer_seq", sequenceName = "employer_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    private String name;

    @Column(name = "search_name")
    private String searchName;

    @Column(name = "contact_name")
    private String contactName;

    private String address;

    private String phone;

    private String email;

    @Column(name = "retired_on")
    private LocalDate retiredOn;

    protected Employer() {
    }

    public Employer(String name) {
        isCalled(name);
    }

    final void isCalled(String newName) {
        name = newName;
        searchName = SearchKey.of(newName);
    }

    /** Takes it out of use; who works there and what was written to it stays as it is. One that is retired already stays so. */
    void retire(LocalDate on) {
        retiredOn = retiredOn == null ? on : retiredOn;
    }

    void bringBack() {
        retiredOn = null;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public void contactAt(String contactName, String address, String phone, String email) {
        this.contactName = contactName;
        this.address = address;
        this.phone = phone;
        this.email = email;
    }

    public Long id() {
        return id;
    }

    public String name() {
        return name;
    }

    public String contactName() {
        return contactName;
    }

    public String address() {
        return address;
    }

    public String phone() {
        return phone;
    }

    public String email() {
        return email;
    }

    public int version() {
        return version;
    }

    /** Returns the day it was taken out of use, or null while it is in use. */
    public LocalDate retiredOn() {
        return retiredOn;
    }
}
