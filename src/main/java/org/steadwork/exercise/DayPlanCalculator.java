package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.DayPlanner;
import org.steadwork.exercise.dayplan.DeskExercise;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.exercise.dayplan.PlannedDay;

/** A working day laid with breaks and exercises, on the Bench. */
@ApplicationScoped
class DayPlanCalculator implements Calculator {

    private static final int MOST_BLOCKS = 20;
    private static final int MOST_EXERCISES = 12;
    private static final int GRID_MINUTES = 5;

    @Override
    public String key() {
        return "day-plan";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.DAY_PLAN;
    }

    @Override
    public String title() {
        return "Day plan";
    }

    @Override
    public String question() {
        return "When do breaks and desk exercises fit into a working day with the fewest interruptions?";
    }

    @Override
    public List<String> limits() {
        return List.of("It lays breaks by the clock; how a body feels on a day is not in it.", "Breaks begin on five-minute steps; a break shorter than five minutes does not count.");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.time("start", "Work begins").example("09:00"), Input.time("end", "Work ends").example("17:00"),
                Input.whole("spell", "Longest sitting spell", "min", 20, 120).startsAt(60), Input.whole("pause", "Length of a break", "min", 5, 30).startsAt(5),
                Input.rows("fixed", "Fixed times", 0, MOST_BLOCKS, List.of(Input.time("from", "From"), Input.time("to", "To"),
                        Input.choice("kind", "Meanwhile", List.of(new Choice("meeting", "Meeting, seated"), new Choice("on_feet", "On the feet"),
                                new Choice("rest", "Rest, such as lunch"))))).hint("Within the day, none over another.")
                        .example(List.of(Map.of("from", "12:30", "to", "13:00", "kind", "rest"))),
                Input.rows("exercises", "Exercises at the desk", 0, MOST_EXERCISES, List.of(Input.text("name", "Name", 60), Input.whole("every", "At least every", "min", 15, 720),
                        Input.whole("seconds", "One session takes", "s", 1, 3600))).example(List.of(Map.of("name", "Neck turns", "every", 120, "seconds", 60))));
    }

    @Override
    public String standing() {
        return "The choice of breaks was compared with every possible plan of small days; the usual 60 and 5 minutes were seen in their source.";
    }

    @Override
    public List<String> sources() {
        return List.of("HSE, Work with display screen equipment (L26): short, frequent breaks", "That exercises ride on breaks: common practice, no source");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        LocalTime start = given.time("start");
        LocalTime end = given.time("end");
        if (!start.isBefore(end)) {
            throw CalculatorRefusal.at(given.path("end"), "Work ends after it begins. It begins at " + start + ".", end, "a time after " + start);
        }
        List<FixedBlock> blocks = new ArrayList<>();
        for (Inputs row : given.rows("fixed")) {
            LocalTime from = row.time("from");
            LocalTime to = row.time("to");
            if (!from.isBefore(to) || from.isBefore(start) || to.isAfter(end)) {
                throw CalculatorRefusal.at(row.path("to"), "A fixed time runs forward within the working day, " + start + " to " + end + ".", from + " to " + to,
                        "a time within the working day");
            }
            blocks.add(new FixedBlock(minutes(from), minutes(to), row.choice("kind", FixedBlock.Kind.class), from + " to " + to));
        }
        List<DeskExercise> exercises = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Inputs row : given.rows("exercises")) {
            exercises.add(new DeskExercise(String.valueOf(names.size()), row.whole("every"), row.whole("seconds")));
            names.add(row.text("name"));
        }
        DayFrame frame = new DayFrame(minutes(start), minutes(end), blocks, given.whole("spell"), given.whole("pause"), GRID_MINUTES);
        return answer(DayPlanner.plan(frame, exercises), names, frame.longestSpell());
    }

    private static BenchAnswer answer(PlannedDay day, List<String> names, int spell) {
        boolean kept = day.longestSpell() <= spell && day.tooLate().isEmpty();
        BenchAnswer answer = BenchAnswer.of(kept ? "Nothing is sat through for longer than wanted" : "Fixed times leave no room for all that is wanted")
                .marked(kept ? Mark.IN : Mark.OUT).headline("Breaks", String.valueOf(day.interruptions()), "").headline("Longest spell", String.valueOf(day.longestSpell()), "min");
        for (PlannedDay.Stop stop : day.stops()) {
            answer.step(ClockTime.shown(stop.from()), stop.fixed() ? "rest that stands already" : "break until " + ClockTime.shown(stop.to()),
                    stop.exercises().isEmpty() ? "stand up and move" : joined(stop, names), "");
        }
        day.tooLate().forEach(late -> answer.note(names.get(Integer.parseInt(late.exercise())) + ": up to " + late.minutes() + " minutes of work pass between two sessions."));
        return answer.result("breaks", day.stops().stream().filter(s -> !s.fixed()).map(s -> Map.of("from", ClockTime.shown(s.from()), "to", ClockTime.shown(s.to()),
                "exercises", s.exercises().stream().map(Integer::parseInt).map(names::get).toList())).toList()).result("longest_spell", day.longestSpell()).result("kept", kept);
    }

    private static String joined(PlannedDay.Stop stop, List<String> names) {
        return stop.exercises().stream().map(Integer::parseInt).map(names::get).collect(Collectors.joining(", "));
    }

    private static int minutes(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }
}
