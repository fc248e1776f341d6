package org.steadwork.outcome;

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
import java.time.LocalDate;
import java.util.List;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.outcome.scoring.AnswersText;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Scored;

/**
 * One filled-in instrument of one case on one day: the raw answers and what the rule of that version made of them.
 * A score without a value (too little answered) is kept with its answers.
 */
@Entity
@Table(name = "score")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class Score {

    @Id
    @GeneratedValue(generator = "score_seq")
    @SequenceGenerator(name = "score_seq", sequenceName = "score_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @Column(name = "scored_on")
    private LocalDate scoredOn;

    private String instrument;

    @Column(name = "instrument_version")
    private String instrumentVersion;

    private String answers;

    @Column(name = "score_value")
    private Double value;

    @Column(name = "low_value")
    private Double low;

    @Column(name = "high_value")
    private Double high;

    private String unit;

    private boolean estimated;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected Score() {
    }

    /** @param scoredOn not before the case was opened */
    public Score(CaseFile caseFile, Instrument instrument, LocalDate scoredOn) {
        if (scoredOn.isBefore(caseFile.openedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " has no score earlier, on " + scoredOn);
        }
        this.caseFile = caseFile;
        this.scoredOn = scoredOn;
        this.instrument = instrument.key();
    }

    /** Records the answers, or corrects them; the rule of the present version makes the value. Null stands for an unanswered item. */
    public void record(Instrument by, List<Integer> given, String recordedBy, Instant recordedAt) {
        if (!by.key().equals(instrument)) {
            throw new IllegalArgumentException("This is a score of " + instrument + ", not of " + by.key());
        }
        Scored scored = by.score(given);
        answers = AnswersText.write(given);
        value = scored.value().isPresent() ? Double.valueOf(scored.value().getAsDouble()) : null;
        low = scored.low().isPresent() ? Double.valueOf(scored.low().getAsDouble()) : null;
        high = scored.high().isPresent() ? Double.valueOf(scored.high().getAsDouble()) : null;
        estimated = scored.estimated();
        instrumentVersion = by.version();
        unit = by.unit();
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
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

    public CaseFile caseFile() {
        return caseFile;
    }

    public LocalDate scoredOn() {
        return scoredOn;
    }

    /** Returns the key of the instrument. */
    public String instrument() {
        return instrument;
    }

    public String instrumentVersion() {
        return instrumentVersion;
    }

    /** Returns the raw answers in item order, null for an unanswered item. */
    public List<Integer> answers() {
        return AnswersText.read(answers);
    }

    /** Returns the score, full precision, or null when too little was answered. */
    public Double value() {
        return value;
    }

    /** Returns the lowest value that the missing items allow, or null. */
    public Double low() {
        return low;
    }

    public Double high() {
        return high;
    }

    public String unit() {
        return unit;
    }

    public boolean estimated() {
        return estimated;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }
}
