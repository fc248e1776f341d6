package org.steadwork.people;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** One place of work of an employer. */
@Entity
@Table(name = "site")
public class Site {

    @Id
    @GeneratedValue(generator = "site_seq")
    @SequenceGenerator(name = "site_seq", sequenceName = "site_seq")
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    private String name;

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
}
