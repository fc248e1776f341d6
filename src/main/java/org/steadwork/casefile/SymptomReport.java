package org.steadwork.casefile;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.body.Mark;
import org.steadwork.kernel.Answer;
import org.steadwork.kernel.StaleVersionException;

/** What the patient reports on one day: where, how much, in which pattern. A case has at most one a day. */
@Entity
@Table(name = "symptom_report")
@Audited
public class SymptomReport {

    @Id
    @GeneratedValue(generator = "symptom_report_seq")
    @SequenceGenerator(name = "symptom_report_seq", sequenceName = "symptom_report_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    @Column(name = "reported_on")
    private LocalDate reportedOn;

    @Column(name = "symptom_free")
    private boolean symptomFree;

    @Enumerated(EnumType.STRING)
    private CourseOverDay course;

    @Enumerated(EnumType.STRING)
    @Column(name = "night_waking")
    private Answer nightWaking;

    @Enumerated(EnumType.STRING)
    @Column(name = "cough_or_sneeze")
    private Answer coughOrSneeze;

    private String aggravating;

    private String easing;

    @Column(name = "own_words", columnDefinition = "text")
    private String ownWords;

    @Column(name = "saved_by")
    private String savedBy;

    @Column(name = "saved_at")
    private Instant savedAt;

    @OneToMany(mappedBy = "report", cascade = CascadeType.ALL, orphanRemoval = true)
    private List<RegionSymptom> regions = new ArrayList<>();

    protected SymptomReport() {
    }

    /**
     * Begins a report of one day.
     *
     * @param reportedOn from the opening of the case to {@code today}, and not after the case was closed
     */
    public SymptomReport(CaseFile caseFile, LocalDate reportedOn, LocalDate today) {
        this.caseFile = caseFile;
        report(SymptomPattern.notAsked(), List.of(), true);
        moveTo(reportedOn, null, today);
    }

    /** Sets the day and the visit it belongs to, which may be null; a day that cannot be throws {@link IllegalArgumentException}. */
    public void moveTo(LocalDate day, Visit visit, LocalDate today) {
        if (day.isBefore(caseFile.openedOn()) || day.isAfter(today)
                || caseFile.closedOn() != null && day.isAfter(caseFile.closedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " and closed on " + caseFile.closedOn()
                    + " has no report of " + day + ", seen on " + today);
        }
        this.reportedOn = day;
        this.visit = visit;
    }

    /**
     * Takes what was said in place of what stands.
     *
     * @param symptomFree the patient said that there are no symptoms; then no zone may be named, and without it one must be
     */
    public void report(SymptomPattern pattern, Collection<RegionReading> readings, boolean symptomFree) {
        if (symptomFree != readings.isEmpty()) {
            throw new IllegalArgumentException("A report names zones, or says that there are no symptoms");
        }
        this.symptomFree = symptomFree;
        course = pattern.course();
        nightWaking = pattern.nightWaking();
        coughOrSneeze = pattern.coughOrSneeze();
        aggravating = pattern.aggravating();
        easing = pattern.easing();
        ownWords = pattern.ownWords();

        Map<String, RegionSymptom> present = new HashMap<>();
        regions.forEach(region -> present.put(region.zone(), region));
        Set<String> named = new HashSet<>();
        for (RegionReading reading : readings) {
            if (!named.add(reading.zone())) {
                throw new IllegalArgumentException("Zone " + reading.zone() + " is named twice");
            }
            RegionSymptom region = present.get(reading.zone());
            if (region == null) {
                regions.add(new RegionSymptom(this, reading));
            } else {
                region.update(reading);
            }
        }
        regions.removeIf(region -> !named.contains(region.zone()));
    }

    /** Notes who saved it and when; this also moves the version on when only a zone changed. */
    public void savedBy(String name, Instant at) {
        savedBy = name;
        savedAt = at;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    /** Returns how often it was saved. */
    public int number() {
        return version + 1;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    /** Returns the visit of that day, or null. */
    public Visit visit() {
        return visit;
    }

    public LocalDate reportedOn() {
        return reportedOn;
    }

    /** True when the patient said that there are no symptoms. */
    public boolean symptomFree() {
        return symptomFree;
    }

    public SymptomPattern pattern() {
        return new SymptomPattern(course, nightWaking, coughOrSneeze, aggravating, easing, ownWords);
    }

    public String savedBy() {
        return savedBy;
    }

    public Instant savedAt() {
        return savedAt;
    }

    /** Returns what was said of each zone. */
    public List<RegionReading> readings() {
        return regions.stream().map(RegionSymptom::reading).toList();
    }

    /** Returns the marks of the body chart: pain now, and kinds. */
    public List<Mark> marks() {
        return readings().stream().map(RegionReading::mark).toList();
    }

    public Set<BodyRegion> regions(BodyChart chart) {
        return chart.regionsOf(regions.stream().map(RegionSymptom::zone).toList());
    }
}
