package org.steadwork.casefile;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.casefile.workplan.GradedReturn;
import org.steadwork.casefile.workplan.WeekSplit;

/**
 * What is agreed in a graded return to work.
 *
 * @param startsOn first day; the weeks of the plan are counted from it, seven days each
 * @param workingDays at least one, in the order of the plan's week
 * @param restrictions what may not be done or only so much of it, in words; may be null
 * @param stepRule when to step up, hold or go back, in words
 * @param agreedWith who agreed, for example the worker and the manager
 * @param whyChanged why this plan replaces the one before; null for the first
 */
public record WorkPlanTerms(LocalDate startsOn, GradedReturn graded, List<DayOfWeek> workingDays, String restrictions, String stepRule,
        String agreedWith, LocalDate agreedOn, String whyChanged) {

    /** The rule offered for a new plan. Common practice, no published source. */
    public static final String USUAL_STEP_RULE = "Up a step when pain at work is 5 of 10 or less, has settled by the next morning, and at least 80 %"
            + " of the planned hours were worked. Hold when one of these fails. Back a step when two fail or two days were missed."
            + " Stop at a new warning sign and call the clinic.";

    private static final int DAYS = 7;

    public WorkPlanTerms {
        if (workingDays.isEmpty()) {
            throw new IllegalArgumentException("A plan needs at least one working day");
        }
        int first = startsOn.getDayOfWeek().getValue();
        workingDays = workingDays.stream().distinct().sorted(java.util.Comparator.comparingInt(day -> Math.floorMod(day.getValue() - first, DAYS)))
                .toList();
    }

    /** Returns the weeks in order, the first normal week last. */
    public List<WorkPlanWeek> weekRows() {
        return IntStream.rangeClosed(1, graded.weeks() + 1).mapToObj(this::week).toList();
    }

    /** Says the short names of the working days in order. */
    public List<String> dayNames() {
        return workingDays.stream().map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)).toList();
    }

    /** Returns the first day of usual hours. */
    public LocalDate normalFrom() {
        return startsOn.plusDays((long) DAYS * graded.weeks());
    }

    public String normalHours() {
        return WorkPlanWeek.hours(graded.normalWeekMinutes());
    }

    public String hoursNotWorked() {
        return WorkPlanWeek.hours(graded.minutesNotWorked());
    }

    public boolean wholeHours() {
        return graded.stepMinutes() == 60;
    }

    private WorkPlanWeek week(int number) {
        LocalDate from = startsOn.plusDays((long) DAYS * (number - 1));
        return new WorkPlanWeek(number, from, from.plusDays(DAYS - 1), graded.minutesOfWeek(number),
                Collections.unmodifiableMap(WeekSplit.of(graded, number, workingDays, startsOn.getDayOfWeek())), number > graded.weeks());
    }

    static String written(List<DayOfWeek> days) {
        return days.stream().map(DayOfWeek::name).collect(Collectors.joining(" "));
    }

    static List<DayOfWeek> days(String written) {
        return Arrays.stream(written.split(" ")).map(DayOfWeek::valueOf).toList();
    }
}
