package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.WorkHistory;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.casefile.WorkPlans;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.HeldExercises;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.letter.SentLetters;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.meeting.CaseBrief.Line;
import org.steadwork.obstacle.Obstacle;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.ObstacleAnswers;
import org.steadwork.obstacle.Obstacles;
import org.steadwork.obstacle.Screening;
import org.steadwork.redflag.CaseStatus;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.Flags;
import org.steadwork.redflag.RedFlags;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.Findings;

/** The lines of a case's page that other parts of the case give: work, red flags, obstacles, work place, programme. */
@ApplicationScoped
class BriefLines {

    private static final Map<Obstacle.Kind, String> COLOURS = Map.of(Obstacle.Kind.PERSON, "Yellow", Obstacle.Kind.WORK, "Blue", Obstacle.Kind.SETTING, "Black",
            Obstacle.Kind.SPECIALIST, "Orange");

    @Inject
    WorkStatuses statuses;

    @Inject
    WorkPlans plans;

    @Inject
    RedFlags redFlags;

    @Inject
    Flags flags;

    @Inject
    ObstacleAnswers answers;

    @Inject
    Obstacles obstacles;

    @Inject
    Screening screening;

    @Inject
    Findings findings;

    @Inject
    FindingWords findingWords;

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    HeldExercises held;

    @Inject
    SentLetters letters;

    List<Line> of(CaseFile file, LocalDate today) {
        long id = file.id();
        List<Finding> found = findings.of(id);
        List<Prescription> given = prescriptions.of(id);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("Work status", InformationCategory.FUNCTIONAL_CAPACITY, work(id, today)));
        lines.add(new Line("Red flags", InformationCategory.RED_FLAG_RESULT, redFlags(id)));
        lines.add(new Line("Obstacles", InformationCategory.PSYCHOSOCIAL_NOTES, obstacles(id)));
        lines.add(new Line("Found at work", InformationCategory.WORKSTATION_FINDINGS, found.isEmpty() ? List.of("Nothing found, or not looked at")
                : findingWords.courses(found)));
        lines.add(new Line("Employer", InformationCategory.WORK_MODIFICATIONS, employer(id, found)));
        lines.add(new Line("Programme", InformationCategory.EXERCISE_PROGRAMME, programme(id, given)));
        lines.add(new Line("Kept", InformationCategory.EXERCISE_PROGRAMME, List.of(kept(id, given))));
        lines.add(new Line("Tried before", InformationCategory.EXERCISE_PROGRAMME, tried(given)));
        return lines;
    }

    private List<String> work(long id, LocalDate today) {
        WorkHistory history = statuses.of(id);
        Optional<WorkStatus> now = history.on(today);
        List<String> lines = new ArrayList<>();
        lines.add(now.map(status -> status.code().label() + (status.details().isEmpty() ? "" : ", " + status.details()) + ", since " + Dates.shown(status.from()))
                .orElse("Not known today") + "; " + history.daysOff(today) + (history.daysOff(today) == 1 ? " day lost" : " days lost"));
        plans.of(id).stream().findFirst().map(BriefLines::plan).ifPresent(lines::add);
        return lines;
    }

    private static String plan(WorkPlan plan) {
        String hours = plan.weekRows().stream().map(week -> week.hours()).collect(Collectors.joining(", "));
        String steps = plan.steps().stream().map(step -> step.decision()).collect(Collectors.joining(", "));
        return "Return plan " + plan.number() + ": " + hours + (steps.isEmpty() ? "; no step decided" : "; " + steps)
                + (plan.running() ? "" : "; ended " + Dates.shown(plan.endedOn()));
    }

    private List<String> redFlags(long id) {
        CaseStatus status = redFlags.status(id);
        List<String> lines = new ArrayList<>();
        lines.add(Initial.large(status.verdict().label()) + status.screenedOn().map(day -> ", screen of " + Dates.shown(day)).orElse(", never asked")
                + (status.outOfDate() ? ", out of date" : "") + (status.screenedOn().isPresent() && !status.signed() ? ", not signed" : ""));
        flags.of(id).stream().map(BriefLines::flag).forEach(lines::add);
        return lines;
    }

    private static String flag(Flag flag) {
        return Initial.large(flag.name()) + (flag.certain() ? "" : ", not known") + ": " + (flag.open() ? "open, " + flag.urgency().label() + ", since "
                + Dates.shown(day(flag.raisedAt())) : "closed " + Dates.shown(day(flag.closedAt())) + ", " + flag.closeReason());
    }

    private static LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, ZoneId.systemDefault());
    }

    /** Names of flags by colour and no more: what was said goes to the meeting only with a tick of its own. */
    private List<String> obstacles(long id) {
        List<ObstacleAnswer> given = answers.of(id);
        List<String> lines = new ArrayList<>();
        for (Obstacle.Kind kind : Obstacle.Kind.values()) {
            String names = given.stream().filter(ObstacleAnswer::present).map(answer -> obstacles.find(answer.obstacle())).flatMap(Optional::stream)
                    .filter(obstacle -> obstacle.kind() == kind).map(Obstacle::name).collect(Collectors.joining("; "));
            if (!names.isEmpty()) {
                lines.add(COLOURS.get(kind) + ": " + names);
            }
        }
        long open = obstacles.all().size() - given.stream().filter(answer -> !answer.answer().open()).count();
        if (lines.isEmpty()) {
            lines.add("None present");
        }
        lines.add(screening.of(id).map(result -> "Screen: " + result.label() + " " + result.score() + ", " + result.words() + ", " + Dates.shown(result.on()))
                .orElse("No risk screen taken") + "; " + open + " flags not settled");
        return lines;
    }

    private List<String> employer(long id, List<Finding> found) {
        List<String> lines = new ArrayList<>();
        List<Finding> asked = found.stream().filter(finding -> FindingWords.asked(finding) != null).toList();
        String waiting = asked.stream().filter(finding -> finding.doneOn() == null && finding.checkedOn() == null)
                .map(finding -> findingWords.change(finding) + " (" + Dates.shown(FindingWords.asked(finding)) + ")").collect(Collectors.joining("; "));
        String done = asked.stream().filter(finding -> finding.doneOn() != null || finding.checkedOn() != null).map(findingWords::change)
                .collect(Collectors.joining("; "));
        lines.add(waiting.isEmpty() ? "Nothing asked for waits" : "Asked, not in place: " + waiting);
        if (!done.isEmpty()) {
            lines.add("Done: " + done);
        }
        letters.toEmployer(id).forEach(sent -> lines.add(sent.title() + " sent " + Dates.shown(sent.on()) + (sent.answered() ? ", answered" : ", no answer on record")));
        return lines;
    }

    private List<String> programme(long id, List<Prescription> given) {
        Predicate<Exercise> paused = held.of(id);
        List<String> lines = given.stream().filter(Prescription::current).map(one -> catalogue.find(one.exerciseKey())
                .map(exercise -> exercise.name() + (paused.test(exercise) ? ", held back by a red flag" : "") + ", since " + Dates.shown(one.startedOn()))
                .orElse(one.exerciseKey())).toList();
        return lines.isEmpty() ? List.of("No exercise given now") : lines;
    }

    private String kept(long id, List<Prescription> given) {
        Map<Long, List<AdherenceEntry>> reported = entries.ofCase(id);
        List<AdherenceEntry> last = given.stream().filter(Prescription::current).map(one -> reported.getOrDefault(one.id(), List.of()))
                .filter(list -> !list.isEmpty()).map(list -> list.get(list.size() - 1)).filter(entry -> entry.adherence().done() != null).toList();
        if (last.isEmpty()) {
            return "Not known: nothing reported";
        }
        Adherence all = new Adherence(last.stream().mapToInt(entry -> entry.adherence().done()).sum(),
                last.stream().mapToInt(entry -> entry.adherence().planned()).sum());
        LocalDate to = last.stream().map(AdherenceEntry::weekTo).max(LocalDate::compareTo).orElseThrow();
        return all.done() + " of " + all.planned() + " sessions reported" + (all.perCent().isPresent() ? ", " + all.perCent().getAsInt() + "\u00a0%" : "")
                + ", " + all.band().label() + ", last week reported to " + Dates.shown(to);
    }

    private List<String> tried(List<Prescription> given) {
        List<String> lines = given.stream().filter(one -> !one.current()).map(one -> catalogue.find(one.exerciseKey()).map(Exercise::name).orElse(one.exerciseKey())
                + ", to " + Dates.shown(one.endedOn()) + ": " + one.endReason()).toList();
        return lines.isEmpty() ? List.of("No exercise ended so far") : lines;
    }
}
