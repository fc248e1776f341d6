package org.steadwork.meeting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.meeting.agenda.AskKind;
import org.steadwork.meeting.agenda.CaseFacts;
import org.steadwork.meeting.agenda.Criteria;
import org.steadwork.meeting.agenda.Reason;
import org.steadwork.meeting.agenda.Rule;
import org.steadwork.outcome.scoring.ChangeVerdict.Kind;

/**
 * Each criterion with a case that just meets it and one that just does not. The numbers are those of common practice in case review
 * (no published source): 6 weeks or 6 visits, 30 days, 4 flags, 28 days off, 2 steps back, 2 misses, 50 % in 3 weeks, 14 days.
 */
class CriteriaTest {

    private static final LocalDate TODAY = LocalDate.of(2030, 12, 16);
    private static final Criteria CRITERIA = CriteriaContent.read(Content.yaml("meeting/criteria.yaml"), name -> Optional.empty());

    private LocalDate opened = TODAY.minusDays(7);
    private final List<CaseFacts.Measure> measures = new ArrayList<>(List.of(measure(14, Kind.IMPORTANT, score(8, false), score(2, false))));
    private CaseFacts.Safety safety = new CaseFacts.Safety(CaseFacts.Screen.COMPLETE, TODAY, List.of());
    private CaseFacts.Person person = person(0, 0, 0, 0, 25, null);
    private CaseFacts.Work work = new CaseFacts.Work("Full", null, List.of());
    private List<CaseFacts.Contact> contacts = contacts("a");
    private CaseFacts.Programme programme = new CaseFacts.Programme(false, List.of());
    private CaseFacts.Workplace workplace = new CaseFacts.Workplace(List.of(), List.of());
    private List<CaseFacts.Ask> asks = List.of();
    private Integer planned;

    @Test
    void aCaseThatGoesWellIsNotBroughtUp() {
        assertEquals(List.of(), judge());
    }

    @Test
    void noMeaningfulChangeInTimeOrVisits() {
        measures(measure(0, Kind.REAL_NOT_YET_IMPORTANT, score(8, false), score(2, false)));
        opened = TODAY.minusDays(41);
        assertNone(Rule.STALLED);
        opened = TODAY.minusDays(42);
        assertHolds(Rule.STALLED, "6\u00a0weeks");
        opened = TODAY.minusDays(20);
        contacts = contacts("aaaaa");
        assertNone(Rule.STALLED);
        contacts = contacts("aaaaam");
        assertNone(Rule.STALLED);
        contacts = contacts("aaaaaa");
        assertHolds(Rule.STALLED, "6\u00a0visits");
        measures(measure(0, Kind.NO_REAL_CHANGE, score(8, false), score(2, false)), measure(0, Kind.IMPORTANT, score(8, false), score(2, false)));
        assertNone(Rule.STALLED);
    }

    @Test
    void whatCannotBeComparedIsNotKnownAndNotStalled() {
        opened = TODAY.minusDays(60);
        measures(measure(0, null, score(3, false)));
        assertUnknown(Rule.STALLED, "no measure has two scores");
        measures(measure(0, Kind.NOT_JUDGED, score(8, false), score(2, false)));
        assertUnknown(Rule.STALLED, "cannot be told");
        measures();
        assertUnknown(Rule.STALLED, "no measure");
    }

    @Test
    void worseOnTwoReviews() {
        measures(measure(0, Kind.WORSE, score(20, false), score(9, false), score(2, true)));
        assertNone(Rule.WORSE);
        measures(measure(0, Kind.WORSE, score(9, true), score(2, true)));
        assertNone(Rule.WORSE);
        measures(measure(0, Kind.WORSE, score(20, false), score(9, true), score(2, true)));
        assertHolds(Rule.WORSE, "NDI");
        CaseFacts.Score remembered = new CaseFacts.Score(TODAY.minusDays(2), "40", true, true);
        measures(measure(0, Kind.WORSE, score(20, false), score(9, true), remembered));
        assertUnknown(Rule.WORSE, "only remembered");
    }

    @Test
    void aNewNeurologicalSign() {
        flags(flag("nk_cord_hands", 42, null));
        assertHolds(Rule.NEUROLOGICAL, "New neurological sign");
        flags(flag("nk_cord_hands", 43, null));
        assertNone(Rule.NEUROLOGICAL);
        flags(flag("gen_weight_loss", 1, null));
        assertNone(Rule.NEUROLOGICAL);
        asks = List.of(ask(AskKind.NEUROLOGICAL_SIGN));
        assertHolds(Rule.NEUROLOGICAL, "reflex");
    }

    @Test
    void aRedFlagOpenOrClosedLessThanThirtyDaysAgo() {
        flags(flag("gen_weight_loss", 300, null));
        assertHolds(Rule.RED_FLAG, "open since");
        flags(flag("gen_weight_loss", 300, 29));
        assertHolds(Rule.RED_FLAG, "closed on");
        flags(flag("gen_weight_loss", 300, 30));
        assertNone(Rule.RED_FLAG);
        safety = new CaseFacts.Safety(CaseFacts.Screen.INCOMPLETE, TODAY, List.of());
        assertUnknown(Rule.RED_FLAG, "not complete");
        safety = new CaseFacts.Safety(CaseFacts.Screen.NONE, null, List.of());
        assertUnknown(Rule.RED_FLAG, "No red-flag question");
    }

    @Test
    void psychosocialFlagsByCount() {
        person = person(0, 2, 1, 3, 25, null);
        assertNone(Rule.PSYCHOSOCIAL);
        person = person(0, 2, 2, 0, 25, null);
        assertHolds(Rule.PSYCHOSOCIAL, "4 yellow or blue");
        person = person(1, 0, 0, 0, 25, null);
        assertHolds(Rule.PSYCHOSOCIAL, "Orange");
        person = person(0, 0, 0, 0, 0, true);
        assertHolds(Rule.PSYCHOSOCIAL, "more support");
        person = person(0, 0, 0, 0, 0, false);
        assertNone(Rule.PSYCHOSOCIAL);
        person = person(0, 0, 0, 1, 25, null);
        work = new CaseFacts.Work("Off", TODAY.minusDays(27), List.of());
        assertNone(Rule.PSYCHOSOCIAL);
        work = new CaseFacts.Work("Off", TODAY.minusDays(28), List.of());
        assertHolds(Rule.PSYCHOSOCIAL, "Black flag and 29");
    }

    @Test
    void psychosocialFlagsNobodyAskedAboutAreNotKnown() {
        person = person(0, 0, 0, 0, 0, null);
        assertUnknown(Rule.PSYCHOSOCIAL, "not asked");
        person = new CaseFacts.Person(List.of(), List.of(), List.of(), List.of(), 0, Optional.of(new CaseFacts.RiskScreen("OMPSQ", TODAY, "40 to 60", null)));
        assertUnknown(Rule.PSYCHOSOCIAL, "items of the screen are missing");
    }

    @Test
    void offWorkOverFourWeeksOrSteppedBackTwice() {
        work = new CaseFacts.Work("Off", TODAY.minusDays(27), List.of());
        assertNone(Rule.OFF_WORK);
        work = new CaseFacts.Work("Off", TODAY.minusDays(28), List.of());
        assertHolds(Rule.OFF_WORK, "29\u00a0days");
        work = new CaseFacts.Work("Full", null, List.of(TODAY));
        assertNone(Rule.OFF_WORK);
        work = new CaseFacts.Work("Full", null, List.of(TODAY, TODAY));
        assertHolds(Rule.OFF_WORK, "put back 2");
        work = new CaseFacts.Work(null, null, List.of());
        assertUnknown(Rule.OFF_WORK, "not known");
    }

    @Test
    void twoMissesInARow() {
        contacts = contacts("am");
        assertNone(Rule.MISSED);
        contacts = contacts("ammam");
        assertNone(Rule.MISSED);
        contacts = contacts("amm");
        assertHolds(Rule.MISSED, "Missed the last 2");
    }

    @Test
    void adherenceUnderHalfThreeWeeksRunning() {
        weeks(9, 9, 9);
        assertHolds(Rule.ADHERENCE, "under 50");
        weeks(9, 10, 9);
        assertNone(Rule.ADHERENCE);
        weeks(10, 9, 9);
        assertNone(Rule.ADHERENCE);
        weeks(9, null, 9);
        assertUnknown(Rule.ADHERENCE, "not every one");
        weeks(10, null, null);
        assertNone(Rule.ADHERENCE);
        programme = new CaseFacts.Programme(true, List.of());
        assertUnknown(Rule.ADHERENCE, "Nothing was reported");
        programme = new CaseFacts.Programme(true, List.of(new CaseFacts.Week(TODAY.minusDays(15), 9, 20)));
        assertUnknown(Rule.ADHERENCE, "since");
        programme = new CaseFacts.Programme(false, List.of(new CaseFacts.Week(TODAY, 0, 20)));
        assertNone(Rule.ADHERENCE);
    }

    /** Two exercises of one week are one share: 4 of 20 and 16 of 20 are half. */
    @Test
    void theSessionsOfAllExercisesCountTogether() {
        List<CaseFacts.Week> weeks = new ArrayList<>();
        for (int back = 2; back >= 0; back--) {
            weeks.add(new CaseFacts.Week(TODAY.minusDays(7L * back), 4, 20));
            weeks.add(new CaseFacts.Week(TODAY.minusDays(7L * back), 16, 20));
        }
        programme = new CaseFacts.Programme(true, weeks);
        assertNone(Rule.ADHERENCE);
        weeks.replaceAll(week -> week.done() == 16 ? new CaseFacts.Week(week.to(), 15, 20) : week);
        programme = new CaseFacts.Programme(true, weeks);
        assertHolds(Rule.ADHERENCE, "3\u00a0weeks");
    }

    @Test
    void conflictComplaintAndIncident() {
        for (AskKind kind : List.of(AskKind.CONFLICT_OF_ADVICE, AskKind.COMPLAINT, AskKind.SAFETY_INCIDENT)) {
            asks = List.of(ask(kind));
            assertHolds(Rule.CONFLICT, kind.label());
            assertNone(Rule.ASKED);
        }
        asks = List.of(ask(AskKind.MEMBER));
        assertNone(Rule.CONFLICT);
        person = new CaseFacts.Person(List.of(), List.of(), List.of(), List.of(new CaseFacts.Present("kf_conflict_advice", "Advice that conflicts")), 1, Optional.empty());
        assertHolds(Rule.CONFLICT, "Advice that conflicts");
    }

    @Test
    void theEmployerDeclinedOrDidNotActInTwoWeeks() {
        workplace = new CaseFacts.Workplace(List.of(new CaseFacts.Change("Desk blocks", TODAY.minusDays(13), "manager")), List.of());
        assertNone(Rule.EMPLOYER);
        workplace = new CaseFacts.Workplace(List.of(new CaseFacts.Change("Desk blocks", TODAY.minusDays(14), "manager")), List.of());
        assertHolds(Rule.EMPLOYER, "Desk blocks");
        workplace = new CaseFacts.Workplace(List.of(), List.of(new CaseFacts.Sent("Report", TODAY.minusDays(14))));
        assertUnknown(Rule.EMPLOYER, "no answer");
        workplace = new CaseFacts.Workplace(List.of(), List.of(new CaseFacts.Sent("Report", TODAY.minusDays(13))));
        assertNone(Rule.EMPLOYER);
        asks = List.of(ask(AskKind.EMPLOYER_DECLINED));
        assertHolds(Rule.EMPLOYER, "declined");
    }

    @Test
    void moreVisitsThanPlanned() {
        contacts = contacts("aaaaaam");
        assertNone(Rule.VISITS_OVER);
        contacts = contacts("aaaaaaa");
        assertHolds(Rule.VISITS_OVER, "more than the usual 6");
        planned = 7;
        assertNone(Rule.VISITS_OVER);
        planned = 6;
        assertHolds(Rule.VISITS_OVER, "more than the planned 6");
    }

    @Test
    void anyMemberAsks() {
        asks = List.of(ask(AskKind.MEMBER));
        assertHolds(Rule.ASKED, "A member asks");
    }

    @Test
    void anOutcomeThatIsNotKnownPastItsDueDateIsAReasonToLook() {
        measures(measure(14, Kind.IMPORTANT, score(60, false), score(21, false)));
        assertNone(Rule.OUTCOME_UNKNOWN);
        measures(measure(14, Kind.IMPORTANT, score(60, false), score(22, false)));
        assertHolds(Rule.OUTCOME_UNKNOWN, "was due on");
        measures(measure(0, Kind.IMPORTANT, score(60, false), score(50, false)));
        assertNone(Rule.OUTCOME_UNKNOWN);
        measures();
        opened = TODAY.minusDays(7);
        assertNone(Rule.OUTCOME_UNKNOWN);
        opened = TODAY.minusDays(8);
        assertHolds(Rule.OUTCOME_UNKNOWN, "no outcome measure");
    }

    @Test
    void aReasonCanBeOpened() {
        opened = TODAY.minusDays(42);
        measures(measure(0, Kind.NO_REAL_CHANGE, score(8, false), score(2, false)));
        ReasonView view = ReasonView.of(judge(), 12).get(0);
        assertEquals("/cases/12/outcomes", view.href());
        assertEquals(1, view.figures().size());
        assertTrue(view.numbers().contains("weeks 6") && view.source().contains("common practice"), view.numbers() + view.source());
        Arrays.stream(Rule.values()).forEach(rule -> assertTrue(CRITERIA.all().stream().anyMatch(criterion -> criterion.rule() == rule), rule.name()));
    }

    @Test
    void aNumberOfTheClinicGoesBeforeTheContents() {
        Map<String, Integer> own = Map.of("stalled.weeks", 4);
        Criteria criteria = CriteriaContent.read(Content.yaml("meeting/criteria.yaml"), name -> Optional.ofNullable(own.get(name)));
        opened = TODAY.minusDays(28);
        measures(measure(0, Kind.NO_REAL_CHANGE, score(8, false), score(2, false)));
        assertNone(Rule.STALLED);
        assertTrue(criteria.judge(facts()).stream().anyMatch(reason -> reason.criterion().rule() == Rule.STALLED));
        assertThrows(ContentException.class, () -> CriteriaContent.read(Content.yaml("meeting/criteria.yaml"), name -> Optional.of(-1)));
    }

    @Test
    void aWrongEntryStopsTheStart() {
        String head = "source: us\ncriteria:\n";
        String missed = "  - {key: missed, words: w, explained: e, numbers: {in_a_row: 2}, source: s, tag: CP}\n";
        for (String wrong : List.of(missed, missed + missed, missed.replace("in_a_row", "row"), missed.replace("tag: CP", "tag: X"), missed.replace("missed", "never"))) {
            ContentException problem = assertThrows(ContentException.class,
                    () -> CriteriaContent.read(Content.yaml("criteria.yaml", new StringReader(head + wrong)), name -> Optional.empty()));
            assertTrue(problem.getMessage().contains("criteria.yaml"), problem.getMessage());
        }
    }

    @Test
    void theKeysOfOtherContentAreThere() {
        Set<String> questions = Content.csv("red-flags/questions.csv").stream().map(row -> row.text("key")).collect(Collectors.toSet());
        questions.addAll(Content.yaml("red-flags/combinations.yaml").entries("rules").stream().map(rule -> rule.text("id")).toList());
        Set<String> obstacles = Content.yaml("obstacles/flags.yaml").entries("flags").stream().map(flag -> flag.text("key")).collect(Collectors.toSet());
        CRITERIA.all().forEach(criterion -> criterion.keys().forEach(key -> assertTrue(questions.contains(key) || obstacles.contains(key), key)));
    }

    private CaseFacts facts() {
        return new CaseFacts(TODAY, opened, measures, safety, person, work, contacts, programme, workplace, asks, planned);
    }

    private List<Reason> judge() {
        return CRITERIA.judge(facts());
    }

    private void assertNone(Rule rule) {
        assertFalse(judge().stream().anyMatch(reason -> reason.criterion().rule() == rule), () -> judge().toString());
    }

    private void assertHolds(Rule rule, String words) {
        assertTrue(judge().stream().anyMatch(reason -> reason.criterion().rule() == rule && reason.holds() && reason.words().contains(words)), () -> judge().toString());
    }

    private void assertUnknown(Rule rule, String words) {
        List<Reason> own = judge().stream().filter(reason -> reason.criterion().rule() == rule).toList();
        assertTrue(own.size() == 1 && !own.get(0).holds() && own.get(0).words().contains(words), own.toString());
    }

    private void measures(CaseFacts.Measure... some) {
        measures.clear();
        measures.addAll(List.of(some));
    }

    private static CaseFacts.Measure measure(int everyDays, Kind since, CaseFacts.Score... scores) {
        return new CaseFacts.Measure("NDI", List.of(scores), Optional.ofNullable(since), everyDays);
    }

    private static CaseFacts.Score score(int daysAgo, boolean worse) {
        return new CaseFacts.Score(TODAY.minusDays(daysAgo), "30", worse, false);
    }

    private void flags(CaseFacts.Flag... flags) {
        safety = new CaseFacts.Safety(CaseFacts.Screen.COMPLETE, TODAY, List.of(flags));
    }

    private static CaseFacts.Flag flag(String origin, int raisedAgo, Integer closedAgo) {
        return new CaseFacts.Flag(origin, "A flag", "watch", TODAY.minusDays(raisedAgo), closedAgo == null ? null : TODAY.minusDays(closedAgo));
    }

    private static CaseFacts.Person person(int orange, int yellow, int blue, int black, int settled, Boolean raised) {
        return new CaseFacts.Person(present(orange), present(yellow), present(blue), present(black), settled,
                raised == null ? Optional.empty() : Optional.of(new CaseFacts.RiskScreen("OMPSQ", TODAY, raised ? "60" : "30", raised)));
    }

    private static List<CaseFacts.Present> present(int number) {
        return Stream.generate(() -> new CaseFacts.Present("some_flag", "Some flag")).limit(number).toList();
    }

    /** @param course a letter a visit: a for attended, m for missed */
    private static List<CaseFacts.Contact> contacts(String course) {
        return course.chars().mapToObj(visit -> new CaseFacts.Contact(TODAY.minusDays(1), visit == 'm')).toList();
    }

    /** Sessions done of 20 in each of the last weeks, the latest last; null for a week without a report. */
    private void weeks(Integer... done) {
        List<CaseFacts.Week> weeks = new ArrayList<>();
        for (int i = 0; i < done.length; i++) {
            if (done[i] != null) {
                weeks.add(new CaseFacts.Week(TODAY.minusDays(7L * (done.length - 1 - i)), done[i], 20));
            }
        }
        programme = new CaseFacts.Programme(true, weeks);
    }

    private static CaseFacts.Ask ask(AskKind kind) {
        return new CaseFacts.Ask(kind, "The ankle reflex is reduced.", "T. Clinician", TODAY);
    }
}
