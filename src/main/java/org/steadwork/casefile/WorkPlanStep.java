package org.steadwork.casefile;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.kernel.Answer;

/** What was decided at one step of a plan, and what was known of the week before. Written once and never changed. */
@Entity
@Immutable
@Table(name = "work_plan_step")
public class WorkPlanStep {

    @Id
    @GeneratedValue(generator = "work_plan_step_seq")
    @SequenceGenerator(name = "work_plan_step_seq", sequenceName = "work_plan_step_seq", allocationSize = 1)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "work_plan_id")
    private WorkPlan plan;

    private int week;

    @Enumerated(EnumType.STRING)
    private NextStep.Move move;

    @Column(name = "worst_pain")
    private Integer worstPain;

    @Enumerated(EnumType.STRING)
    private Answer settled;

    @Column(name = "worked_minutes")
    private Integer workedMinutes;

    @Column(name = "days_missed")
    private Integer daysMissed;

    private String words;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    protected WorkPlanStep() {
    }

    /**
     * Keeps a decision.
     *
     * @param week the week the step leads into, from 1
     * @param move up, hold, back or stop
     * @param before what is known of the week before
     * @param words why, may be null
     */
    public WorkPlanStep(WorkPlan plan, int week, NextStep.Move move, WeekBefore before, String words, String recordedBy, Instant recordedAt) {
        if (move == NextStep.Move.ASK) {
            throw new IllegalArgumentException("A decision is up, hold, back or stop");
        }
        this.plan = plan;
        this.week = week;
        this.move = move;
        worstPain = before.worstPain();
        settled = before.settled();
        workedMinutes = before.workedMinutes();
        daysMissed = before.daysMissed();
        this.words = words;
        this.recordedBy = recordedBy;
        this.recordedAt = recordedAt;
        plan.add(this);
    }

    /** What is known of a week at work; null for what is not known. Pain 0 to 10, days missed 0 to 7. */
    public record WeekBefore(Integer worstPain, Answer settled, Integer workedMinutes, Integer daysMissed) {

        /** Nothing is known, as before the first week. */
        public static final WeekBefore UNKNOWN = new WeekBefore(null, Answer.NOT_ASKED, null, null);
    }

    public int week() {
        return week;
    }

    public NextStep.Move move() {
        return move;
    }

    public WeekBefore before() {
        return new WeekBefore(worstPain, settled, workedMinutes, daysMissed);
    }

    public String words() {
        return words;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    /** Says the decision, for example "up to week 2". */
    public String decision() {
        return switch (move) {
            case UP -> week == 1 ? "begun" : "up to week " + week;
            case HOLD -> "held in week " + (week - 1);
            case BACK -> "back a step";
            case STOP -> "stopped";
            case ASK -> "not decided";
        };
    }
}
