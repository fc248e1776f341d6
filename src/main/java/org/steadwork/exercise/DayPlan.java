package org.steadwork.exercise;

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
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.envers.Audited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.kernel.StaleVersionException;

/** The working day of a patient, on which breaks and desk exercises are laid. One for each case; what is laid is computed anew. */
@Entity
@Table(name = "day_plan")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class DayPlan {

    private static final int GRID_MINUTES = 5;

    @Id
    @GeneratedValue(generator = "day_plan_seq")
    @SequenceGenerator(name = "day_plan_seq", sequenceName = "day_plan_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String mark;

    @Column(name = "work_from")
    private int workFrom;

    @Column(name = "work_to")
    private int workTo;

    @Column(name = "work_days")
    @Convert(converter = WorkDaysColumn.class)
    private Set<DayOfWeek> workDays;

    @Column(name = "longest_spell")
    private int longestSpell;

    @Column(name = "break_minutes")
    private int breakMinutes;

    @Column(name = "fixed_blocks", columnDefinition = "text")
    @Convert(converter = FixedBlocksColumn.class)
    private List<FixedBlock> fixedBlocks;

    @Column(name = "morning_at")
    private Integer morningAt;

    @Column(name = "evening_at")
    private Integer eveningAt;

    private boolean discreet;

    @Column(name = "saved_by")
    private String savedBy;

    @Column(name = "saved_at")
    private Instant savedAt;

    protected DayPlan() {
    }

    public DayPlan(CaseFile caseFile) {
        this.caseFile = caseFile;
        this.mark = UUID.randomUUID().toString();
    }

    /**
     * Says what the working day is like.
     *
     * @param morningAt minutes after midnight at which exercises at home are done before work; null for none
     * @param eveningAt the same after work
     * @param discreet  true when a calendar shows breaks without the names of exercises
     */
    public void lay(DayFrame frame, Set<DayOfWeek> days, Integer morningAt, Integer eveningAt, boolean discreet, String savedBy, Instant savedAt) {
        if (days.isEmpty()) {
            throw new IllegalArgumentException("A working week has at least one day");
        }
        this.workFrom = frame.from();
        this.workTo = frame.to();
        this.fixedBlocks = frame.blocks();
        this.longestSpell = frame.longestSpell();
        this.breakMinutes = frame.breakMinutes();
        this.workDays = days;
        this.morningAt = morningAt;
        this.eveningAt = eveningAt;
        this.discreet = discreet;
        this.savedBy = savedBy;
        this.savedAt = savedAt;
    }

    public void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public DayFrame frame() {
        return new DayFrame(workFrom, workTo, fixedBlocks, longestSpell, breakMinutes, GRID_MINUTES);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    /** A random name that stays with the plan; it says nothing about the patient. */
    public String mark() {
        return mark;
    }

    public Set<DayOfWeek> workDays() {
        return workDays;
    }

    public Integer morningAt() {
        return morningAt;
    }

    public Integer eveningAt() {
        return eveningAt;
    }

    public boolean discreet() {
        return discreet;
    }

    public String savedBy() {
        return savedBy;
    }

    public Instant savedAt() {
        return savedAt;
    }
}
