package org.steadwork.meeting;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.WorkHistory;
import org.steadwork.casefile.WorkPlanStep;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.kernel.Answer;
import org.steadwork.meeting.agenda.CaseFacts;
import org.steadwork.obstacle.Obstacle;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.Obstacles;
import org.steadwork.obstacle.Screening;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.Shown;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.RedFlagScreen;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Initial;

/** Makes what a case recorded into what the criteria look at. */
final class FactWords {

    private FactWords() {
    }

    static List<CaseFacts.Measure> measures(List<MeasureCourse> courses) {
        return courses.stream().filter(course -> course.instrument().outcome() && !course.points().isEmpty()).map(course -> new CaseFacts.Measure(
                course.instrument().label(), scores(course), course.sinceFirst().map(ChangeVerdict::kind), course.instrument().everyDays())).toList();
    }

    private static List<CaseFacts.Score> scores(MeasureCourse course) {
        Instrument instrument = course.instrument();
        double first = course.points().get(0).value();
        List<CaseFacts.Score> scores = new ArrayList<>();
        for (MeasureCourse.Point point : course.points()) {
            ChangeVerdict verdict = ChangeVerdict.of(instrument, course.region(), first, point.value());
            boolean worse = verdict.kind() == ChangeVerdict.Kind.WORSE;
            scores.add(new CaseFacts.Score(point.on(), Shown.value(instrument, point.value()), worse, worse && !verdict.alerts()));
        }
        return scores;
    }

    static CaseFacts.Safety safety(List<RedFlagScreen> newest, List<Flag> flags, ZoneId zone) {
        List<CaseFacts.Flag> raised = flags.stream().map(flag -> new CaseFacts.Flag(flag.origin(), Initial.large(flag.name()), flag.urgency().label(),
                LocalDate.ofInstant(flag.raisedAt(), zone), flag.open() ? null : LocalDate.ofInstant(flag.closedAt(), zone))).toList();
        if (newest.isEmpty()) {
            return new CaseFacts.Safety(CaseFacts.Screen.NONE, null, raised);
        }
        RedFlagScreen screen = newest.get(0);
        boolean complete = screen.signed() && screen.verdict() != Verdict.INCOMPLETE;
        return new CaseFacts.Safety(complete ? CaseFacts.Screen.COMPLETE : CaseFacts.Screen.INCOMPLETE, screen.screenedOn(), raised);
    }

    static CaseFacts.Person person(List<ObstacleAnswer> answers, Optional<Screening.Result> screen, Obstacles obstacles) {
        int settled = (int) answers.stream().filter(answer -> answer.answer() == Answer.YES || answer.answer() == Answer.NO).count();
        return new CaseFacts.Person(present(answers, obstacles, Obstacle.Kind.SPECIALIST), present(answers, obstacles, Obstacle.Kind.PERSON),
                present(answers, obstacles, Obstacle.Kind.WORK), present(answers, obstacles, Obstacle.Kind.SETTING), settled,
                screen.map(result -> new CaseFacts.RiskScreen(result.label(), result.on(), result.score(), result.settled() ? result.raised() : null)));
    }

    private static List<CaseFacts.Present> present(List<ObstacleAnswer> answers, Obstacles obstacles, Obstacle.Kind kind) {
        return answers.stream().filter(ObstacleAnswer::present).map(answer -> obstacles.find(answer.obstacle())).flatMap(Optional::stream)
                .filter(obstacle -> obstacle.kind() == kind).map(obstacle -> new CaseFacts.Present(obstacle.key(), obstacle.name())).toList();
    }

    static CaseFacts.Work work(List<WorkStatus> spells, List<WorkPlanStep> back, LocalDate today, ZoneId zone) {
        Optional<WorkStatus> now = new WorkHistory(spells).on(today).filter(status -> status.code() != WorkStatusCode.UNKNOWN);
        LocalDate since = now.filter(status -> status.code() == WorkStatusCode.OFF).map(status -> offSince(spells, status)).orElse(null);
        return new CaseFacts.Work(now.map(status -> status.code().label()).orElse(null), since,
                back.stream().map(step -> LocalDate.ofInstant(step.recordedAt(), zone)).toList());
    }

    /** The first day of the spell off: spells that follow one another without a day between are one. */
    private static LocalDate offSince(List<WorkStatus> spells, WorkStatus now) {
        LocalDate since = now.from();
        for (int i = spells.indexOf(now) - 1; i >= 0; i--) {
            WorkStatus before = spells.get(i);
            boolean reaches = before.until() == null || !before.until().isBefore(since.minusDays(1));
            if (before.code() != WorkStatusCode.OFF || !reaches) {
                break;
            }
            since = before.from();
        }
        return since;
    }

    static CaseFacts.Programme programme(boolean given, List<AdherenceEntry> reported) {
        return new CaseFacts.Programme(given, reported.stream().map(entry -> new CaseFacts.Week(entry.weekTo(), entry.adherence().done(),
                entry.adherence().planned())).toList());
    }
}
