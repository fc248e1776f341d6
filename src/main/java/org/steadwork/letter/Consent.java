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
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.letter.disclosure.GivenConsent;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;

/** The worker's agreement that named kinds of information may go to one named reader, for a time; it can be withdrawn at any time. */
@Entity
@Table(name = "disclosure_consent")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class Consent {

    enum How {
        SIGNED("signed on paper"), SPOKEN("spoken and noted"), PHONE("by telephone and noted"), WRITTEN("in writing, not on our form");

        private final String label;

        How(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(generator = "disclosure_consent_seq")
    @SequenceGenerator(name = "disclosure_consent_seq", sequenceName = "disclosure_consent_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id", updatable = false)
    private CaseFile caseFile;

    @Enumerated(EnumType.STRING)
    @Column(name = "recipient_kind", updatable = false)
    private Recipient recipientKind;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "correspondent_id", updatable = false)
    private Correspondent correspondent;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id", updatable = false)
    private Employer employer;

    @Column(name = "recipient_name", updatable = false)
    private String recipientName;

    @Enumerated(EnumType.STRING)
    @Column(name = "given_how", updatable = false)
    private How givenHow;

    @Column(name = "given_on", updatable = false)
    private LocalDate givenOn;

    @Column(name = "holds_until", updatable = false)
    private LocalDate holdsUntil;

    @Convert(converter = TickedColumn.class)
    @Column(updatable = false)
    private Set<InformationCategory> ticked;

    @Column(name = "shown_text", updatable = false)
    private String shownText;

    @Column(name = "withdrawn_on")
    private LocalDate withdrawnOn;

    @Column(name = "withdrawn_how")
    private String withdrawnHow;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "recorded_by_id", updatable = false)
    private Account recordedBy;

    protected Consent() {
    }

    /**
     * Records a consent.
     *
     * @param until     last day on which it holds, not before {@code givenOn}
     * @param shownText what the worker was shown or told before agreeing
     */
    Consent(CaseFile caseFile, LetterReader reader, How how, LocalDate givenOn, LocalDate until, Set<InformationCategory> ticked,
            String shownText, Account recordedBy) {
        this.caseFile = caseFile;
        this.recipientKind = reader.kind();
        this.correspondent = reader.correspondent();
        this.employer = reader.employer();
        this.recipientName = reader.name();
        this.givenHow = how;
        this.givenOn = givenOn;
        this.holdsUntil = until;
        this.ticked = Set.copyOf(ticked);
        this.shownText = shownText;
        this.recordedBy = recordedBy;
        given();
    }

    /** Ends the consent from a day on, that day included; a second withdrawal changes nothing that was recorded. */
    void withdraw(LocalDate on, String how) {
        if (withdrawnOn != null) {
            throw new IllegalStateException("This consent was already withdrawn on " + withdrawnOn);
        }
        if (on.isBefore(givenOn)) {
            throw new IllegalArgumentException("A consent given on " + givenOn + " cannot be withdrawn earlier, on " + on);
        }
        withdrawnOn = on;
        withdrawnHow = how;
    }

    GivenConsent given() {
        return new GivenConsent(givenOn, holdsUntil, Optional.ofNullable(withdrawnOn), ticked);
    }

    boolean isFor(LetterReader reader) {
        return reader.kind() == recipientKind && (recipientKind == Recipient.CASE_REVIEW || reader.employer() != null
                ? employer != null && employer.id().equals(reader.employer().id())
                : correspondent != null && correspondent.id().equals(reader.correspondent().id()));
    }

    /** Returns the stable name of the reader, as {@link LetterReader#key()} gives it. */
    String readerKey() {
        return employer != null ? "employer-" + employer.id() : "correspondent-" + correspondent.id();
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

    CaseFile caseFile() {
        return caseFile;
    }

    public Recipient recipientKind() {
        return recipientKind;
    }

    Long caseId() {
        return caseFile.id();
    }

    Long employerId() {
        return employer == null ? null : employer.id();
    }

    Long correspondentId() {
        return correspondent == null ? null : correspondent.id();
    }

    public String recipientName() {
        return recipientName;
    }

    public How givenHow() {
        return givenHow;
    }

    public LocalDate givenOn() {
        return givenOn;
    }

    public LocalDate holdsUntil() {
        return holdsUntil;
    }

    public Set<InformationCategory> ticked() {
        return ticked;
    }

    public String shownText() {
        return shownText;
    }

    public LocalDate withdrawnOn() {
        return withdrawnOn;
    }
}
