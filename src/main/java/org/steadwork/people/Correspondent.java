package org.steadwork.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** A reader outside the clinic who may receive a letter: a doctor, a specialist or hospital, an insurer. */
@Entity
@Table(name = "correspondent")
public class Correspondent {

    /** What kind of reader. */
    public enum Kind {
        DOCTOR("Doctor"), SPECIALIST("Specialist or hospital"), INSURER("Insurer or claims body");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(generator = "correspondent_seq")
    @SequenceGenerator(name = "correspondent_seq", sequenceName = "correspondent_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Enumerated(EnumType.STRING)
    private Kind kind;

    private String name;

    @Column(name = "search_name")
    private String searchName;

    private String organisation;

    private String address;

    private String phone;

    private String email;

    protected Correspondent() {
    }

    public Correspondent(Kind kind, String name) {
        this.kind = kind;
        this.name = name;
        this.searchName = SearchKey.of(name);
    }

    public void contactAt(String organisation, String address, String phone, String email) {
        this.organisation = organisation;
        this.address = address;
        this.phone = phone;
        this.email = email;
    }

    public Long id() {
        return id;
    }

    public Kind kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    public String organisation() {
        return organisation;
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
