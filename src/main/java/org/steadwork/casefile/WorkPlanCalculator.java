package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.casefile.workplan.GradedReturn;
import org.steadwork.casefile.workplan.WeekSplit;
import org.steadwork.web.Dates;

/** The weeks of a graded return to work on the Bench. */
@ApplicationScoped
class WorkPlanCalculator implements Calculator {

    private static final int HALF_HOUR = 30;
    private static final int HOUR = 60;
    private static final int MOST_WEEKS = 26;
    private static final long DAYS_A_WEEK = 7;

    @Override
    public String key() {
        return "work-plan";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Graded return to work";
    }

    @Override
    public String question() {
        return "How many hours is each week and each day of a graded return?";
    }

    @Override
    public List<String> limits() {
        return List.of("Arithmetic only: start, length and steps are agreed by the worker, the clinician and the employer.",
                "Plans over four weeks are seldom useful except after long absence (one physician's opinion).",
                "A new red flag stops a plan.");
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(List.of(Input.number("normal_hours", "Normal week", "h", 0.5, 100, 2).example(40),
                Input.whole("start_percent", "Start", "% of the normal week", 1, 99).example(50),
                Input.whole("weeks", "Phased weeks", "weeks", 1, MOST_WEEKS).example(4), Input.choice("rounding", "Rounded to",
                        List.of(new Choice("half_hours", "Half hours"), new Choice("whole_hours", "Whole hours"))).startsAt("half_hours"),
                Input.date("starts_on", "First day").optional().example("2030-03-04")
                        .hint("Weeks begin on its day of the week; without it, on Monday.")));
        for (DayOfWeek day : DayOfWeek.values()) {
            inputs.add(Input.yesNo(key(day), "Works on " + name(day)).startsAt(day.getValue() <= DayOfWeek.FRIDAY.getValue()));
        }
        return inputs;
    }

    @Override
    public String standing() {
        return "The formula and the split over days are common practice without a published source; five worked plans were computed from it with exact "
                + "fractions.";
    }

    @Override
    public List<String> sources() {
        return List.of("Common practice of graded return, no published source for the formula", "Published worked plans of two to four weeks (gradient and length)");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        GradedReturn plan = new GradedReturn(given.decimal("normal_hours").multiply(BigDecimal.valueOf(HOUR))
                .setScale(0, RoundingMode.HALF_UP).intValueExact(), given.whole("start_percent"), given.whole("weeks"),
                given.choice("rounding").equals("whole_hours") ? HOUR : HALF_HOUR);
        List<DayOfWeek> days = Arrays.stream(DayOfWeek.values()).filter(day -> given.yes(key(day))).toList();
        if (days.isEmpty()) {
            throw CalculatorRefusal.at(given.path(key(DayOfWeek.MONDAY)), "A week needs at least one working day.", "no", "yes for one day or more");
        }
        BenchAnswer answer = BenchAnswer.of("From " + hours(plan.minutesOfWeek(1)) + " to " + hours(plan.normalWeekMinutes()) + " a week, the normal week from week "
                + (plan.weeks() + 1)).headline("Hours not worked", hours(plan.minutesNotWorked()), "");
        List<Map<String, Object>> weeks = new ArrayList<>();
        LocalDate start = given.has("starts_on") ? given.date("starts_on") : null;
        for (int week = 1; week <= plan.weeks() + 1; week++) {
            LocalDate from = start == null ? null : start.plusDays(DAYS_A_WEEK * (week - 1));
            Map<DayOfWeek, Integer> split = WeekSplit.of(plan, week, days, start == null ? DayOfWeek.MONDAY : start.getDayOfWeek());
            List<String> shown = new ArrayList<>();
            Map<String, Object> minutes = new LinkedHashMap<>();
            split.forEach((day, worked) -> {
                shown.add(day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + (worked == 0 ? "free" : hours(worked)));
                minutes.put(key(day), worked);
            });
            answer.step("Week " + week + (from == null ? "" : ", from " + Dates.shown(from)), String.join(", ", shown), hours(plan.minutesOfWeek(week)), "");
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("week", week);
            if (from != null) {
                row.put("from", from.toString());
            }
            row.put("minutes", plan.minutesOfWeek(week));
            row.put("days", minutes);
            weeks.add(row);
        }
        return answer.note("Up, hold or back a step: " + WorkPlanTerms.USUAL_STEP_RULE).result("weeks", weeks)
                .result("normal_minutes", plan.normalWeekMinutes()).result("minutes_not_worked", plan.minutesNotWorked());
    }

    private static String hours(int minutes) {
        return WorkPlanWeek.hours(minutes).replace('\u00a0', ' ');
    }

    private static String key(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private static String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
