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
import java.time.LocalDate;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;

/** An activity that the person named as hard: in their words, rated from 0 (unable) to 10 (as before) at each review. */
@Entity
@Table(name = "own_activity")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class OwnActivity {

    /** The scale takes at most five. */
    public static final int MOST = 5;

    @Id
    @GeneratedValue(generator = "own_activity_seq")
    @SequenceGenerator(name = "own_activity_seq", sequenceName = "own_activity_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String words;

    @Column(name = "named_on")
    private LocalDate namedOn;

    protected OwnActivity() {
    }

    public OwnActivity(CaseFile caseFile, String words, LocalDate namedOn) {
        this.caseFile = caseFile;
        this.words = words;
        this.namedOn = namedOn;
    }

    public Long id() {
        return id;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public String words() {
        return words;
    }

    public LocalDate namedOn() {
        return namedOn;
    }
}
