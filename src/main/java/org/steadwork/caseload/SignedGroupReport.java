package org.steadwork.caseload;

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

/** A group report as it was signed: what it says, the file and its fingerprint. Never changed, never counted again. */
@Entity
@Immutable
@Table(name = "signed_group_report")
class SignedGroupReport {

    static final int LARGEST_BYTES = 1_000_000;
    private static final int LONGEST_CONTENT = 200_000;

    @Id
    @Column(name = "report_id")
    private Long reportId;

    @Column(name = "report_version")
    private int reportVersion;

    private String reference;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "signed_by_id")
    private Account signedBy;

    @Column(name = "signed_at")
    private Instant signedAt;

    @Column(length = LONGEST_CONTENT, columnDefinition = "text")
    private String content;

    private int pages;

    private String sha256;

    @Column(length = LARGEST_BYTES)
    private byte[] pdf;

    protected SignedGroupReport() {
    }

    /** @param content what it says, as JSON of {@link PrintedGroupReport} */
    SignedGroupReport(GroupReport report, Account signedBy, Instant signedAt, String content, LetterPdf file) {
        if (file.bytes().length > LARGEST_BYTES || content.length() > LONGEST_CONTENT) {
            throw new IllegalArgumentException("A group report may have " + LARGEST_BYTES + " bytes, but this one has " + file.bytes().length);
        }
        this.reportId = report.id();
        this.reportVersion = report.version();
        this.reference = report.reference();
        this.signedBy = signedBy;
        this.signedAt = signedAt;
        this.content = content;
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

    String content() {
        return content;
    }

    public String reference() {
        return reference;
    }

    public Account signedBy() {
        return signedBy;
    }

    public Instant signedAt() {
        return signedAt;
    }

    public int pages() {
        return pages;
    }

    public String sha256() {
        return sha256;
    }
}
