package org.steadwork.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** Who a patient works for, with the person there who receives reports. */
@Entity
@Table(name = "employer")
public class Employer {

    @Id
    @GeneratedValue(generator = "employer_seq")
    @SequenceGenerator(name = "employer_seq", sequenceName = "employer_seq")
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

    protected Employer() {
    }

    public Employer(String name) {
        this.name = name;
        this.searchName = SearchKey.of(name);
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
}
