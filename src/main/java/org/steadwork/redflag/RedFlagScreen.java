package org.steadwork.redflag;

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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernate.envers.Audited;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RelationTargetAuditMode;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.kernel.Answer;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.redflag.rules.Verdict;

/** The red-flag questions of one visit with their answers; once signed it stays as it is. */
@Entity
@Table(name = "red_flag_screen")
@Audited(targetAuditMode = RelationTargetAuditMode.NOT_AUDITED)
public class RedFlagScreen {

    @Id
    @GeneratedValue(generator = "red_flag_screen_seq")
    @SequenceGenerator(name = "red_flag_screen_seq", sequenceName = "red_flag_screen_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "case_file_id")
    private CaseFile caseFile;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "visit_id")
    private Visit visit;

    @Enumerated(EnumType.STRING)
    private Occasion occasion;

    @Column(name = "screened_on")
    private LocalDate screenedOn;

    private String regions = "";

    @Column(name = "left_open")
    private String leftOpen = "";

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "begun_by_id")
    private Account begunBy;

    @Column(name = "begun_at")
    private Instant begunAt;

    @Column(name = "saved_at")
    private Instant savedAt;

    @Enumerated(EnumType.STRING)
    private Verdict verdict = Verdict.INCOMPLETE;

    @Column(name = "open_answers")
    private String openAnswers = "";

    @Column(name = "suspended_until_asked")
    private String suspendedUntilAsked = "";

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "signed_by_id")
    private Account signedBy;

    @Column(name = "signed_at")
    private Instant signedAt;

    // the answers are audited themselves, and name their screen
    @NotAudited
    @OneToMany(mappedBy = "screen", cascade = CascadeType.ALL)
    private List<RedFlagAnswer> answers = new ArrayList<>();

    protected RedFlagScreen() {
    }

    /** @param leftOpen keys that earlier screens of the case left open; they stay due */
    RedFlagScreen(CaseFile caseFile, Visit visit, Occasion occasion, LocalDate screenedOn, Set<String> leftOpen, Account by, Instant now) {
        if (screenedOn.isBefore(caseFile.openedOn())) {
            throw new IllegalArgumentException("A case opened on " + caseFile.openedOn() + " has no screen earlier, on " + screenedOn);
        }
        this.caseFile = caseFile;
        this.visit = visit;
        this.occasion = occasion;
        this.screenedOn = screenedOn;
        this.leftOpen = Words.join(leftOpen);
        this.begunBy = by;
        this.begunAt = now;
        this.savedAt = now;
    }

    /** Takes the answers over; a key that is not among them keeps the answer it has. */
    void answer(Set<String> regions, Map<String, GivenAnswer> given, Instant now) {
        requireUnsigned();
        this.regions = Words.join(regions);
        this.savedAt = now;
        given.forEach((key, one) -> answers.stream().filter(answer -> answer.key().equals(key)).findFirst().or(() -> {
            if (one.blank()) {
                return Optional.empty();
            }
            RedFlagAnswer made = new RedFlagAnswer(this, key);
            answers.add(made);
            return Optional.of(made);
        }).ifPresent(answer -> answer.say(one.answer(), one.note(), one.declined())));
    }

    /**
     * Notes what the answers amount to.
     *
     * @param openAnswers keys whose answers are still open
     * @param untilAsked tokens suspended while due questions are not asked
     */
    void concluded(Verdict verdict, Set<String> openAnswers, Set<String> untilAsked) {
        if (verdict == Verdict.CLEAR && !openAnswers.isEmpty()) {
            throw new IllegalStateException("A screen with open answers is not clear: " + openAnswers);
        }
        this.verdict = verdict;
        this.openAnswers = Words.join(openAnswers);
        this.suspendedUntilAsked = Words.join(untilAsked);
    }

    public void sign(Account clinician, Instant now) {
        requireUnsigned();
        signedBy = clinician;
        signedAt = now;
    }

    private void requireUnsigned() {
        if (signed()) {
            throw new IllegalStateException("Screen " + id + " is signed and stays as it is");
        }
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    public boolean signed() {
        return signedAt != null;
    }

    /** True only when every due question is no and the screen is signed. */
    public boolean clear() {
        return verdict == Verdict.CLEAR && signed();
    }

    public ScreenAnswers given() {
        Map<String, Answer> given = new LinkedHashMap<>();
        answers.forEach(answer -> given.put(answer.key(), answer.answer()));
        return ScreenAnswers.of(given);
    }

    public Map<String, RedFlagAnswer> answersByKey() {
        Map<String, RedFlagAnswer> byKey = new LinkedHashMap<>();
        answers.forEach(answer -> byKey.put(answer.key(), answer));
        return byKey;
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

    public Visit visit() {
        return visit;
    }

    public Occasion occasion() {
        return occasion;
    }

    public LocalDate screenedOn() {
        return screenedOn;
    }

    public Set<String> regions() {
        return Words.split(regions);
    }

    public Set<String> leftOpen() {
        return Words.split(leftOpen);
    }

    public Account begunBy() {
        return begunBy;
    }

    public Instant savedAt() {
        return savedAt;
    }

    public Verdict verdict() {
        return verdict;
    }

    public Set<String> openAnswers() {
        return Words.split(openAnswers);
    }

    public Set<String> suspendedUntilAsked() {
        return Words.split(suspendedUntilAsked);
    }

    public Account signedBy() {
        return signedBy;
    }

    public Instant signedAt() {
        return signedAt;
    }
}
