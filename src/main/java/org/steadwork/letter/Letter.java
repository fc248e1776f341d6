package org.steadwork.letter;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
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
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;
import org.steadwork.people.Patient;
import org.steadwork.web.TextsColumn;

/**
 * A letter while it is written. Signing leaves this row as it is and adds a {@link SignedLetter} that points at its version,
 * so that the database itself refuses any later change.
 */
@Entity
@Table(name = "letter")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class Letter {

    @Id
    @GeneratedValue(generator = "letter_seq")
    @SequenceGenerator(name = "letter_seq", sequenceName = "letter_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id", updatable = false)
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "patient_id", updatable = false)
    private Patient patient;

    @Column(updatable = false)
    private int number;

    @Column(updatable = false)
    private String kind;

    @Enumerated(EnumType.STRING)
    @Column(name = "recipient_kind", updatable = false)
    private Recipient recipientKind;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "correspondent_id", updatable = false)
    private Correspondent correspondent;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id", updatable = false)
    private Employer employer;

    @Convert(converter = TextsColumn.class)
    private Map<String, String> texts;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "drafted_by_id", updatable = false)
    private Account draftedBy;

    @Column(name = "drafted_at", updatable = false)
    private Instant draftedAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "saved_by_id")
    private Account savedBy;

    @Column(name = "saved_at")
    private Instant savedAt;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "replaces_id")
    private Letter replaces;

    protected Letter() {
    }

    /** Begins a letter; {@code number} counts from 1 within the patient. */
    Letter(CaseFile caseFile, int number, String kind, LetterReader reader, Map<String, String> texts, Account by, Instant at) {
        this.caseFile = caseFile;
        this.patient = caseFile.patient();
        this.number = number;
        this.kind = kind;
        this.recipientKind = reader.kind();
        this.correspondent = reader.correspondent();
        this.employer = reader.employer();
        this.draftedBy = by;
        this.draftedAt = at;
        write(texts, by, at);
    }

    /** Says that this letter, once signed, takes the place of a signed one to the same reader. */
    void inPlaceOf(Letter wrong) {
        replaces = wrong;
    }

    /** Replaces the words; the database refuses it once the letter is signed. */
    void write(Map<String, String> words, Account by, Instant at) {
        texts = new LinkedHashMap<>(words);
        savedBy = by;
        savedAt = at;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    LetterReader reader() {
        return new LetterReader(recipientKind, correspondent, employer, recipientKind == Recipient.WORKER ? patient : null);
    }

    /** Returns the reference printed on the letter: the patient's file number and the letter's number. */
    public String reference() {
        return patient.fileNumber() + "/" + number;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    /** Returns the letter whose place this one takes, or null. */
    public Letter replaces() {
        return replaces;
    }

    public int number() {
        return number;
    }

    public String kind() {
        return kind;
    }

    public Map<String, String> texts() {
        return Map.copyOf(texts);
    }

    public Account draftedBy() {
        return draftedBy;
    }

    public Instant draftedAt() {
        return draftedAt;
    }

    public Account savedBy() {
        return savedBy;
    }

    public Instant savedAt() {
        return savedAt;
    }
}
