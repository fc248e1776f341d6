package org.steadwork.exposure.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The composite lifting index of a job of several lifting tasks.
 * Source: DHHS (NIOSH) 94-110 (1994, rev. 2021), multi-task procedure.
 */
public final class CompositeLifting {

    /** One task of the job: its lift, its largest and its average load in kg. */
    public record Task(Lift lift, double largestKg, double averageKg) {

        public Task {
            Checks.within("Largest load", largestKg, 0, 200, "kg");
            Checks.within("Average load", averageKg, 0, largestKg, "kg");
        }
    }

    /** A task whose frequency-independent limit is known already; limit and load in the same unit, both over 0. */
    public record KnownTask(double limit, double load, double perMinute, boolean handsLow) {

        public KnownTask {
            Checks.within("Limit", limit, Double.MIN_VALUE, 1000, "");
            Checks.within("Load", load, 0, 1000, "");
            Checks.within("Lifts per minute", perMinute, 0, 60, "/min");
        }
    }

    /** A task as computed: limits without and with its own frequency, and their indices. */
    public record Line(int number, double firwl, double strwl, double fili, double stli, double perMinute, boolean handsLow) {
    }

    /** The index, none where the summed frequency allows nothing, and each task's line, the hardest first. */
    public record Result(OptionalDouble index, List<Line> lines) {
    }

    private CompositeLifting() {
    }

    /** Computes the index; all tasks share the job's duration class. */
    public static Result of(LiftingEquation equation, List<Task> tasks, LiftingDuration duration) {
        if (tasks.isEmpty()) {
            throw new IllegalArgumentException("A job has at least one task");
        }
        List<Line> lines = new ArrayList<>();
        for (Task task : tasks) {
            Lift lift = task.lift();
            double firwl = equation.frequencyIndependentLimit(lift);
            double strwl = firwl * equation.frequencies().at(lift.perMinute(), duration, lift.handsLow());
            lines.add(new Line(lines.size() + 1, firwl, strwl, task.largestKg() / firwl, task.averageKg() / strwl, lift.perMinute(), lift.handsLow()));
        }
        return sorted(equation.frequencies(), lines, duration);
    }

    /** Computes the index of tasks whose limits are known; the same load counts as largest and as average. */
    public static Result ofKnown(FrequencyTable frequencies, List<KnownTask> tasks, LiftingDuration duration) {
        if (tasks.isEmpty()) {
            throw new IllegalArgumentException("A job has at least one task");
        }
        List<Line> lines = new ArrayList<>();
        for (KnownTask task : tasks) {
            double strwl = task.limit() * frequencies.at(task.perMinute(), duration, task.handsLow());
            lines.add(new Line(lines.size() + 1, task.limit(), strwl, task.load() / task.limit(), task.load() / strwl, task.perMinute(), task.handsLow()));
        }
        return sorted(frequencies, lines, duration);
    }

    private static Result sorted(FrequencyTable frequencies, List<Line> lines, LiftingDuration duration) {
        lines.sort(Comparator.comparingDouble(Line::stli).reversed());
        return new Result(index(frequencies, lines, duration), List.copyOf(lines));
    }

    /** Combines lines already sorted, the hardest first. */
    static OptionalDouble index(FrequencyTable frequencies, List<Line> lines, LiftingDuration duration) {
        double index = lines.get(0).stli();
        double sum = lines.get(0).perMinute();
        for (Line line : lines.subList(1, lines.size())) {
            double before = frequencies.at(sum, duration, line.handsLow());
            sum += line.perMinute();
            double with = frequencies.at(sum, duration, line.handsLow());
            index += line.fili() * (1 / with - 1 / before);
        }
        return Double.isFinite(index) ? OptionalDouble.of(index) : OptionalDouble.empty();
    }
}
