package org.steadwork.caseload;

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
import java.time.Instant;
import java.util.Locale;
import org.steadwork.account.Account;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.people.Employer;

/** The report on one employer's people of one half-year while it is written: the clinic's word to the reader; the rest is counted. */
@Entity
@Table(name = "group_report")
class GroupReport {

    static final int LONGEST_COMMENT = 2000;

    @Id
    @GeneratedValue(generator = "group_report_seq")
    @SequenceGenerator(name = "group_report_seq", sequenceName = "group_report_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "employer_id")
    private Employer employer;

    private String period;

    @Column(name = "comment")
    private String comment;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "saved_by_id")
    private Account savedBy;

    @Column(name = "saved_at")
    private Instant savedAt;

    protected GroupReport() {
    }

    GroupReport(Employer employer, ReportPeriod period) {
        this.employer = employer;
        this.period = period.key();
    }

    /** @param words to the reader, null for none; at most {@link #LONGEST_COMMENT} characters */
    void say(String words, Account by, Instant at) {
        comment = words;
        savedBy = by;
        savedAt = at;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    Long id() {
        return id;
    }

    int version() {
        return version;
    }

    String comment() {
        return comment;
    }

    /** Returns the number that names the report outside. */
    String reference() {
        return "GR-" + employer.id() + "-" + period.toUpperCase(Locale.ROOT);
    }
}
