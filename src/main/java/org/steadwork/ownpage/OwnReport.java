package org.steadwork.ownpage;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;

/** What the patient reported before a visit. It counts for nothing until a clinician has looked at it. */
@Entity
@Table(name = "own_report")
public class OwnReport {

    @Id
    @GeneratedValue(generator = "own_report_seq")
    @SequenceGenerator(name = "own_report_seq", sequenceName = "own_report_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "reported_on")
    private LocalDate reportedOn;

    @ElementCollection
    @CollectionTable(name = "own_report_line", joinColumns = @JoinColumn(name = "own_report_id"))
    @OrderColumn(name = "place")
    private List<OwnReportLine> lines = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "own_report_answer", joinColumns = @JoinColumn(name = "own_report_id"))
    @OrderColumn(name = "place")
    private List<OwnReportAnswer> answers = new ArrayList<>();

    private String sending;

    @Column(columnDefinition = "text")
    private String worse;

    @Column(columnDefinition = "text")
    private String warnings;

    @Column(name = "at_once")
    private boolean atOnce;

    @Column(name = "pain_up")
    private boolean painUp;

    @Column(name = "own_words")
    private String ownWords;

    @Column(name = "received_at")
    private Instant receivedAt;

    @Column(name = "reviewed_by")
    private String reviewedBy;

    @Column(name = "reviewed_at")
    private Instant reviewedAt;

    @Column(name = "review_note")
    private String reviewNote;

    protected OwnReport() {
    }

    /**
     * Takes a report.
     *
     * @param warnings warning signs that the patient ticked, in the words shown
     * @param atOnce   true when one of them calls for the emergency number
     * @param painUp   true when pain rose by more than measurement error since the last report
     */
    public OwnReport(CaseFile caseFile, LocalDate reportedOn, List<OwnReportLine> lines, List<String> warnings, boolean atOnce, boolean painUp, String ownWords, Instant receivedAt) {
        this.caseFile = caseFile;
        this.reportedOn = reportedOn;
        this.lines.addAll(lines);
        this.warnings = warnings.isEmpty() ? null : String.join("\n", warnings);
        this.atOnce = atOnce;
        this.painUp = painUp;
        this.ownWords = ownWords;
        this.receivedAt = receivedAt;
    }

    /**
     * Adds the questionnaires.
     *
     * @param worse what got worse by more than measurement error beside pain, in words
     */
    public void answered(List<OwnReportAnswer> given, List<String> worse) {
        answers.addAll(given);
        this.worse = worse.isEmpty() ? null : String.join("\n", worse);
    }

    /** Names the sending: what arrives again under the same name is the same report. Null for a phone that named none. */
    void sentAs(String name) {
        sending = name;
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    /** Notes that a clinician looked at it and what was done with it. */
    void reviewed(String by, Instant at, String note) {
        if (reviewedAt != null) {
            throw new IllegalStateException("This report was looked at already");
        }
        reviewedBy = by;
        reviewedAt = at;
        reviewNote = note;
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

    public LocalDate reportedOn() {
        return reportedOn;
    }

    public List<OwnReportLine> lines() {
        return lines;
    }

    public List<String> warnings() {
        return warnings == null ? List.of() : warnings.lines().toList();
    }

    public boolean atOnce() {
        return atOnce;
    }

    public boolean painUp() {
        return painUp;
    }

    public boolean alarming() {
        return warnings != null || painUp || worse != null;
    }

    public List<OwnReportAnswer> answers() {
        return answers;
    }

    /** What got worse by more than measurement error beside pain. */
    public List<String> worse() {
        return worse == null ? List.of() : worse.lines().toList();
    }

    String sending() {
        return sending;
    }

    public String ownWords() {
        return ownWords;
    }

    public Instant receivedAt() {
        return receivedAt;
    }

    public String reviewedBy() {
        return reviewedBy;
    }

    public Instant reviewedAt() {
        return reviewedAt;
    }

    public String reviewNote() {
        return reviewNote;
    }
}
