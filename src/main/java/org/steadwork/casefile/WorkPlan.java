package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.casefile.workplan.GradedReturn;
import org.steadwork.casefile.workplan.NextStep;

/** A graded return-to-work plan as agreed; a change of plan is a new one with the next number, and the old ones are kept. */
@Entity
@Table(name = "work_plan")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class WorkPlan {

    @Id
    @GeneratedValue(generator = "work_plan_seq")
    @SequenceGenerator(name = "work_plan_seq", sequenceName = "work_plan_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private int number;

    @Column(name = "starts_on")
    private LocalDate startsOn;

    @Column(name = "normal_week_minutes")
    private int normalWeekMinutes;

    @Column(name = "start_percent")
    private int startPercent;

    private int weeks;

    @Column(name = "step_minutes")
    private int stepMinutes;

    @Column(name = "working_days")
    private String workingDays;

    private String restrictions;

    @Column(name = "step_rule")
    private String stepRule;

    @Column(name = "agreed_with")
    private String agreedWith;

    @Column(name = "agreed_on")
    private LocalDate agreedOn;

    @Column(name = "why_changed")
    private String whyChanged;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    @Column(name = "ended_on")
    private LocalDate endedOn;

    @Column(name = "end_reason")
    private String endReason;

    // written once each and never changed, so they need no history
    @OneToMany(mappedBy = "plan")
    @OrderBy("week")
    @NotAudited
    private List<WorkPlanStep> steps = new ArrayList<>();

    protected WorkPlan() {
    }

    /** Keeps what was agreed; {@code number} counts from 1 within the case. */
    public WorkPlan(CaseFile caseFile, int number, WorkPlanTerms terms, String recordedBy, Instant recordedAt) {
        if (number < 1) {
            throw new IllegalArgumentException("Plans count from 1, but the number was " + number);
        }
        this.caseFile = caseFile;
        this.number = number;
        startsOn = terms.startsOn();
        normalWeekMinutes = terms.graded().normalWeekMinutes();
        startPercent = terms.graded().startPercent();
        weeks = terms.graded().weeks();
        stepMinutes = terms.graded().stepMinutes();
        workingDays = WorkPlanTerms.written(terms.workingDays());
        restrictions = terms.restrictions();
        stepRule = terms.stepRule();
        agreedWith = terms.agreedWith();
        agreedOn = terms.agreedOn();
        whyChanged = terms.whyChanged();
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
    }

    /** Ends the plan for a reason, as when it is done or stopped; it stays in the record. */
    public void end(LocalDate on, String reason) {
        if (endedOn != null) {
            throw new IllegalStateException("Plan " + number + " was already ended on " + endedOn);
        }
        endedOn = on;
        endReason = reason;
    }

    void add(WorkPlanStep step) {
        steps.add(step);
    }

    /** Returns what was agreed. */
    public WorkPlanTerms terms() {
        return new WorkPlanTerms(startsOn, new GradedReturn(normalWeekMinutes, startPercent, weeks, stepMinutes), days(), restrictions, stepRule,
                agreedWith, agreedOn, whyChanged);
    }

    /** Returns the weeks of the plan in order, the normal week last. */
    public List<WorkPlanWeek> weekRows() {
        return terms().weekRows();
    }

    /** Returns the week of the plan that a day falls in, from 1; 0 before the start, {@code weeks + 1} from the normal week on. */
    public int weekOn(LocalDate day) {
        return day.isBefore(startsOn) ? 0 : (int) Math.min(weeks + 1L, (day.toEpochDay() - startsOn.toEpochDay()) / 7 + 1);
    }

    /** Returns the first step not yet decided, if its day has come; each step has its own number, that of the week it leads into. */
    public Optional<WorkPlanWeek> stepDue(LocalDate today) {
        if (endedOn != null || steps.stream().anyMatch(step -> step.move() != NextStep.Move.UP)) {
            return Optional.empty();
        }
        return weekRows().stream().filter(week -> steps.stream().noneMatch(step -> step.week() == week.number()))
                .findFirst().filter(week -> !week.from().isAfter(today));
    }

    public boolean running() {
        return endedOn == null;
    }

    public Long id() {
        return id;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public int number() {
        return number;
    }

    public LocalDate endedOn() {
        return endedOn;
    }

    public String endReason() {
        return endReason;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    /** Returns the steps decided so far, in order. */
    public List<WorkPlanStep> steps() {
        return List.copyOf(steps);
    }

    private List<DayOfWeek> days() {
        return WorkPlanTerms.days(workingDays);
    }
}
