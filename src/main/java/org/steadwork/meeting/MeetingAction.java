package org.steadwork.meeting;

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
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;

/** What somebody does by a day, as agreed in a meeting. What becomes of it is told by its steps; it comes back until done or dropped. */
@Entity
@Table(name = "meeting_action")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
class MeetingAction {

    /** How an action stands on a day. */
    enum State {
        OPEN("open", "open"), OVERDUE("overdue", "near"), DONE("done", "done"), DROPPED("dropped", "none");

        private final String label;
        private final String mark;

        State(String label, String mark) {
            this.label = label;
            this.mark = mark;
        }

        public String label() {
            return label;
        }

        /** The modifier of the status sign. */
        public String mark() {
            return mark;
        }
    }

    @Id
    @GeneratedValue(generator = "meeting_action_seq")
    @SequenceGenerator(name = "meeting_action_seq", sequenceName = "meeting_action_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "meeting_id")
    private ReviewMeeting meeting;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    private String words;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "who_id")
    private Account who;

    @Column(name = "due_on")
    private LocalDate dueOn;

    @Column(name = "recorded_by")
    private String recordedBy;

    @Column(name = "recorded_at")
    private Instant recordedAt;

    // written once each and never changed, so they need no history
    @NotAudited
    @OneToMany(mappedBy = "action")
    @OrderBy("number")
    private List<ActionStep> steps = new ArrayList<>();

    protected MeetingAction() {
    }

    MeetingAction(ReviewMeeting meeting, CaseFile caseFile) {
        this.meeting = meeting;
        this.caseFile = caseFile;
    }

    void agree(String what, Account by, LocalDate due, String recorder, Instant at) {
        words = what;
        who = by;
        dueOn = due;
        recordedBy = recorder;
        recordedAt = at;
    }

    void add(ActionStep step) {
        steps.add(step);
    }

    public boolean open() {
        return steps.isEmpty() || last().state() == ActionStep.State.OPEN;
    }

    public State state(LocalDate today) {
        if (open()) {
            return dueOn.isBefore(today) ? State.OVERDUE : State.OPEN;
        }
        return last().state() == ActionStep.State.DONE ? State.DONE : State.DROPPED;
    }

    /** Returns what was recorded last, or null while nothing was. */
    public ActionStep last() {
        return steps.isEmpty() ? null : steps.get(steps.size() - 1);
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    public ReviewMeeting meeting() {
        return meeting;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public String words() {
        return words;
    }

    public Account who() {
        return who;
    }

    public LocalDate dueOn() {
        return dueOn;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public List<ActionStep> steps() {
        return List.copyOf(steps);
    }
}
