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
        lines.sort(Comparator.comparingDouble(Line::stli).reversed());
        return new Result(index(equation.frequencies(), lines, duration), List.copyOf(lines));
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
