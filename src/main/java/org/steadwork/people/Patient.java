package org.steadwork.people;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
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
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashSet;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.kernel.StaleVersionException;

/** A worker who is seen here: who they are, where they work, who their doctor is. */
@Entity
@Table(name = "patient")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Patient {

    @Id
    @GeneratedValue(generator = "patient_seq")
    @SequenceGenerator(name = "patient_seq", sequenceName = "patient_seq")
    private Long id;

    @Version
    private int version;

    @Column(name = "file_number")
    private String fileNumber;

    @Column(name = "given_name")
    private String givenName;

    @Column(name = "family_name")
    private String familyName;

    @Column(name = "search_name")
    private String searchName;

    @Column(name = "birth_date")
    private LocalDate birthDate;

    @Enumerated(EnumType.STRING)
    private Sex sex = Sex.NOT_RECORDED;

    @Enumerated(EnumType.STRING)
    private Handedness handedness = Handedness.NOT_RECORDED;

    @Column(name = "job_title")
    private String jobTitle;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "site_id")
    private Site site;

    private String department;

    @Column(name = "hours_a_week")
    private BigDecimal hoursAWeek;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "doctor_id")
    private Correspondent doctor;

    private String phone;

    private String email;

    private String address;

    @Column(name = "registered_on")
    private LocalDate registeredOn;

    @NotAudited
    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "patient_word", joinColumns = @JoinColumn(name = "patient_id"))
    private Set<NameWord> words = new HashSet<>();

    protected Patient() {
    }

    /** Registers a patient; {@code birthDate} lies before {@code registeredOn} and at most 120 years back. */
    public Patient(String fileNumber, String givenName, String familyName, LocalDate birthDate, LocalDate registeredOn) {
        this.fileNumber = fileNumber;
        this.registeredOn = registeredOn;
        identify(givenName, familyName, birthDate);
    }

    public void identify(String givenName, String familyName, LocalDate birthDate) {
        if (birthDate.isAfter(registeredOn) || birthDate.isBefore(registeredOn.minusYears(120))) {
            throw new IllegalArgumentException("A birth date lies within 120 years before " + registeredOn + ", but was " + birthDate);
        }
        this.givenName = givenName;
        this.familyName = familyName;
        this.birthDate = birthDate;
        this.searchName = SearchKey.of(givenName + " " + familyName);
        Set<NameWord> found = NameWord.in(searchName);
        words.retainAll(found);
        words.addAll(found);
    }

    public void describe(Sex sex, Handedness handedness) {
        this.sex = sex;
        this.handedness = handedness;
    }

    /** @param hoursAWeek usual weekly hours in [0, 100], null when not known */
    public void worksAs(String jobTitle, Employer employer, Site site, String department, BigDecimal hoursAWeek) {
        this.jobTitle = jobTitle;
        this.employer = employer;
        this.site = site;
        this.department = department;
        this.hoursAWeek = hoursAWeek;
    }

    public void seesDoctor(Correspondent doctor) {
        this.doctor = doctor;
    }

    public void contactAt(String phone, String email, String address) {
        this.phone = phone;
        this.email = email;
        this.address = address;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public String name() {
        return givenName + " " + familyName;
    }

    /** Full years of age on a day. */
    public int ageOn(LocalDate day) {
        return Period.between(birthDate, day).getYears();
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public String fileNumber() {
        return fileNumber;
    }

    public String givenName() {
        return givenName;
    }

    public String familyName() {
        return familyName;
    }

    public LocalDate birthDate() {
        return birthDate;
    }

    public Sex sex() {
        return sex;
    }

    public Handedness handedness() {
        return handedness;
    }

    public String jobTitle() {
        return jobTitle;
    }

    public Employer employer() {
        return employer;
    }

    public Site site() {
        return site;
    }

    public String department() {
        return department;
    }

    public BigDecimal hoursAWeek() {
        return hoursAWeek;
    }

    public Correspondent doctor() {
        return doctor;
    }

    public String phone() {
        return phone;
    }

    public String email() {
        return email;
    }

    public String address() {
        return address;
    }

    public LocalDate registeredOn() {
        return registeredOn;
    }
}
