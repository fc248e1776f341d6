package org.steadwork.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.drawing.DayStrip;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.exercise.dayplan.PlannedDay;

/**
 * A working day with what is laid on it, as pages and calendars show it.
 *
 * @param names name of each exercise by its key
 * @param home  exercises done at home
 */
public record DayPlanView(DayPlan plan, PlannedDay day, Map<String, String> names, List<Home> home) {

    /** An exercise at home. */
    public record Home(String name, String dose) {
    }

    /**
     * A row of the day as read from top to bottom.
     *
     * @param minutes how long it lasts
     */
    public record Row(String from, String to, int minutes, String what, String exercises, boolean stop, boolean tooLong) {
    }

    /** Everything that happens on the day, in order. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        parts().forEach(part -> rows.add(new Row(ClockTime.shown(part.from()), ClockTime.shown(part.to()), part.to() - part.from(), part.words(),
                exercisesAt(part.from()), part.kind() == DayStrip.Kind.PAUSE || part.kind() == DayStrip.Kind.REST, part.kind() == DayStrip.Kind.TOO_LONG)));
        return rows;
    }

    /** The strip for wide pages and prints. */
    public String wideStrip() {
        return strip(720);
    }

    /** The strip for phones. */
    public String narrowStrip() {
        return strip(320);
    }

    /** What the plan comes to, in one sentence. */
    public String words() {
        int breaks = day.interruptions();
        return (breaks == 0 ? "No break is needed" : breaks == 1 ? "One break" : breaks + " breaks") + ", longest sitting spell " + day.longestSpell()
                + " minutes" + (day.secondsOfExercise() == 0 ? "" : ", " + Math.max(1, Math.round(day.secondsOfExercise() / 60)) + " minutes of exercise at work") + ".";
    }

    /** What could not be kept, for the clinician. */
    public List<String> shortfalls() {
        List<String> words = new ArrayList<>();
        day.spells().stream().filter(PlannedDay.Spell::tooLong).forEach(s -> words.add("From " + ClockTime.shown(s.from()) + " to " + ClockTime.shown(s.to())
                + " the patient sits for " + s.minutes() + " minutes: fixed times leave no room for a break."));
        day.tooLate().forEach(l -> words.add(names.get(l.exercise()) + ": up to " + l.minutes() + " minutes of work pass between two sessions."));
        return words;
    }

    /** Names of the exercises of a stop, joined for people. */
    public String exercises(PlannedDay.Stop stop) {
        return stop.exercises().stream().map(names::get).collect(Collectors.joining(", "));
    }

    private String exercisesAt(int from) {
        return day.stops().stream().filter(s -> s.from() == from).findFirst().map(this::exercises).orElse("");
    }

    private String strip(int width) {
        DayFrame frame = plan.frame();
        return DayStrip.svg(frame.from(), frame.to(), parts(), width, words());
    }

    private List<DayStrip.Part> parts() {
        List<DayStrip.Part> parts = new ArrayList<>();
        for (PlannedDay.Spell spell : day.spells()) {
            parts.addAll(sitting(spell));
        }
        day.stops().stream().filter(s -> !s.fixed()).forEach(s -> parts.add(new DayStrip.Part(s.from(), s.to(), DayStrip.Kind.PAUSE, "Break")));
        plan.frame().blocks().stream().filter(b -> b.kind() != FixedBlock.Kind.MEETING).forEach(b -> parts.add(new DayStrip.Part(b.from(), b.to(),
                b.kind() == FixedBlock.Kind.REST ? DayStrip.Kind.REST : DayStrip.Kind.ON_FEET, b.label())));
        parts.sort(Comparator.comparingInt(DayStrip.Part::from));
        return parts;
    }

    /** A sitting spell, parted where a meeting begins or ends. */
    private List<DayStrip.Part> sitting(PlannedDay.Spell spell) {
        List<DayStrip.Part> parts = new ArrayList<>();
        int since = spell.from();
        for (FixedBlock meeting : plan.frame().blocks()) {
            if (meeting.kind() == FixedBlock.Kind.MEETING && meeting.from() >= spell.from() && meeting.to() <= spell.to()) {
                addWork(parts, since, meeting.from(), spell.tooLong());
                parts.add(new DayStrip.Part(meeting.from(), meeting.to(), spell.tooLong() ? DayStrip.Kind.TOO_LONG : DayStrip.Kind.MEETING, meeting.label()));
                since = meeting.to();
            }
        }
        addWork(parts, since, spell.to(), spell.tooLong());
        return parts;
    }

    private static void addWork(List<DayStrip.Part> parts, int from, int to, boolean tooLong) {
        if (to > from) {
            parts.add(new DayStrip.Part(from, to, tooLong ? DayStrip.Kind.TOO_LONG : DayStrip.Kind.SITTING, "Work at the desk"));
        }
    }
}
