package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.steadwork.body.SymptomKind;

/** One zone of a symptom report, as stored. */
@Entity
@Table(name = "region_symptom")
@Audited
public class RegionSymptom {

    @Id
    @GeneratedValue(generator = "region_symptom_seq")
    @SequenceGenerator(name = "region_symptom_seq", sequenceName = "region_symptom_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "symptom_report_id")
    private SymptomReport report;

    private String zone;

    @Column(name = "pain_now")
    private Integer now;

    @Column(name = "pain_worst")
    private Integer worst;

    @Column(name = "pain_average")
    private Integer average;

    @Column(name = "pain_at_work")
    private Integer atWork;

    @Column(name = "limits_work")
    private Integer limitsWork;

    @Convert(converter = KindsColumn.class)
    private Set<SymptomKind> kinds;

    @Column(name = "since_when")
    private String since;

    private String pattern;

    protected RegionSymptom() {
    }

    RegionSymptom(SymptomReport report, RegionReading reading) {
        this.report = report;
        this.zone = reading.zone();
        update(reading);
    }

    void update(RegionReading reading) {
        now = reading.now();
        worst = reading.worst();
        average = reading.average();
        atWork = reading.atWork();
        limitsWork = reading.limitsWork();
        kinds = reading.kinds();
        since = reading.since();
        pattern = reading.pattern();
    }

    public String zone() {
        return zone;
    }

    /** Returns what was said, as a value. */
    public RegionReading reading() {
        return new RegionReading(zone, now, worst, average, atWork, limitsWork, kinds, since, pattern);
    }
}
