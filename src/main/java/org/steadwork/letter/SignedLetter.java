package org.steadwork.letter;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.account.Account;
import org.steadwork.letter.pdf.LetterPdf;

/** A letter as it was signed: the file itself, its fingerprint, who signed and what allowed it. Never changed, never removed. */
@Entity
@Immutable
@Table(name = "signed_letter")
class SignedLetter {

    /** The largest file that is kept, in bytes; the smaller database's column holds no more. */
    static final int LARGEST_BYTES = 1_000_000;

    @Id
    @Column(name = "letter_id")
    private Long letterId;

    @Column(name = "letter_version")
    private int letterVersion;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "signed_by_id")
    private Account signedBy;

    @Column(name = "signed_at")
    private Instant signedAt;

    private String reference;

    @Column(name = "recipient_name")
    private String recipientName;

    private String basis;

    private String confirmed;

    private int pages;

    private String sha256;

    @Column(length = LARGEST_BYTES)
    private byte[] pdf;

    protected SignedLetter() {
    }

    /**
     * Signs one version of a letter.
     *
     * @param basis     what allowed it to leave: the consent and the ticks used, or the override
     * @param confirmed what the clinician was asked and answered; may be null
     */
    SignedLetter(Letter letter, Account signedBy, Instant signedAt, LetterPdf file, String basis, String confirmed) {
        if (file.bytes().length > LARGEST_BYTES) {
            throw new IllegalArgumentException("A signed letter may have " + LARGEST_BYTES + " bytes, but this one has " + file.bytes().length);
        }
        this.letterId = letter.id();
        this.letterVersion = letter.version();
        this.signedBy = signedBy;
        this.signedAt = signedAt;
        this.reference = letter.reference();
        this.recipientName = letter.reader().name();
        this.basis = basis;
        this.confirmed = confirmed;
        this.pages = file.pages();
        this.sha256 = file.sha256();
        this.pdf = file.bytes().clone();
    }

    /** True when the file still has the fingerprint it was signed with. */
    boolean untouched() {
        return LetterPdf.sha256(pdf).equals(sha256);
    }

    byte[] pdf() {
        return pdf.clone();
    }

    public Long letterId() {
        return letterId;
    }

    public Account signedBy() {
        return signedBy;
    }

    public Instant signedAt() {
        return signedAt;
    }

    public String reference() {
        return reference;
    }

    public String recipientName() {
        return recipientName;
    }

    public String basis() {
        return basis;
    }

    public String confirmed() {
        return confirmed;
    }

    public int pages() {
        return pages;
    }

    public String sha256() {
        return sha256;
    }
}
