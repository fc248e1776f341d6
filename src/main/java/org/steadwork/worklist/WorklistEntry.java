package org.steadwork.worklist;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
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
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.TextsColumn;

/**
 * One thing in one case that stands on Today, or stood there and left. It repeats what the rules say of the case, so that a long list can
 * be turned over page by page, and so that what left can be told.
 */
@Entity
@Table(name = "worklist_entry")
public class WorklistEntry {

    private static final List<String> MARKS = List.of("out", "near", "open");
    private static final int LONGEST_LABEL = 120;
    private static final int LONGEST_REASON = 2000;

    @Id
    @GeneratedValue(generator = "worklist_entry_seq")
    @SequenceGenerator(name = "worklist_entry_seq", sequenceName = "worklist_entry_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id", updatable = false)
    private CaseFile caseFile;

    /** The same number by itself, so that asking for it does not fetch the case. */
    @Column(name = "case_file_id", insertable = false, updatable = false)
    private long caseId;

    @Column(updatable = false)
    private String rule;

    @Column(updatable = false)
    private String subject;

    @Enumerated(EnumType.ORDINAL)
    private Attention.Urgency urgency;

    /** Place in the order of Today before age: urgency, and within it a red flag before what is late, that before what is merely to do. */
    private int place;

    private int level;

    @Column(name = "since_on")
    private LocalDate since;

    private String label;

    private String reason;

    private String action;

    private String mark;

    private String href;

    @Convert(converter = TextsColumn.class)
    @Column(columnDefinition = "text")
    private Map<String, String> facts;

    /** The day on which it stands on the list again, while somebody has put it off; the {@link Snooze} says who and why. */
    @Column(name = "put_off_until")
    private LocalDate putOffUntil;

    @Column(name = "first_seen_at")
    private Instant firstSeenAt;

    @Column(name = "cleared_on")
    private LocalDate clearedOn;

    @Column(name = "cleared_at")
    private Instant clearedAt;

    @Column(name = "cleared_act")
    private String clearedAct;

    protected WorklistEntry() {
    }

    WorklistEntry(CaseFile caseFile, Attention.Entry told, Instant now) {
        this.caseFile = caseFile;
        caseId = told.caseId();
        rule = told.rule().key();
        subject = told.subject();
        firstSeenAt = now;
        says(told);
    }

    /** Takes over what the rule says now. */
    void says(Attention.Entry told) {
        urgency = told.urgency();
        place = told.urgency().ordinal() * MARKS.size() + MARKS.indexOf(told.mark().equals("none") ? "open" : told.mark());
        level = told.level();
        since = told.since();
        label = clipped(told.label(), LONGEST_LABEL);
        reason = clipped(told.reason(), LONGEST_REASON);
        action = told.action();
        mark = told.mark();
        href = told.href();
        if (!told.facts().equals(facts)) {
            facts = told.facts();
        }
    }

    /** Stands again after it had left. */
    void comesBack(Attention.Entry told, Instant now) {
        clearedOn = null;
        clearedAt = null;
        clearedAct = null;
        firstSeenAt = now;
        says(told);
    }

    void putOff(LocalDate until) {
        putOffUntil = until;
    }

    void onTheListAgain() {
        putOffUntil = null;
    }

    /** @param act what was done in the case since it was last seen, or null when nothing was */
    void leaves(LocalDate day, Instant now, String act) {
        clearedOn = day;
        clearedAt = now;
        clearedAct = act;
    }

    private static String clipped(String words, int longest) {
        return words.length() <= longest ? words : words.substring(0, longest - 1) + "\u2026";
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public boolean stands() {
        return clearedAt == null;
    }

    public Long id() {
        return id;
    }

    public int version() {
        return version;
    }

    long caseId() {
        return caseId;
    }

    public CaseFile caseFile() {
        return caseFile;
    }

    public String rule() {
        return rule;
    }

    public String subject() {
        return subject;
    }

    public Attention.Urgency urgency() {
        return urgency;
    }

    public int level() {
        return level;
    }

    public LocalDate since() {
        return since;
    }

    public String label() {
        return label;
    }

    public String reason() {
        return reason;
    }

    public String action() {
        return action;
    }

    public String mark() {
        return mark;
    }

    public String href() {
        return href;
    }

    public Map<String, String> facts() {
        return facts;
    }

    public Instant firstSeenAt() {
        return firstSeenAt;
    }

    public LocalDate clearedOn() {
        return clearedOn;
    }

    public Instant clearedAt() {
        return clearedAt;
    }

    public String clearedAct() {
        return clearedAct;
    }
}
