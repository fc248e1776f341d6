package org.steadwork.exercise;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.exercise.dayplan.Range;
import org.steadwork.exercise.dayplan.WorkingDay;

/**
 * The exercises of a case as pages show them.
 *
 * @param items   those given now, in the order they were given
 * @param ended   those that ended
 * @param version counts every save, so that two sheets can be told apart
 */
record Programme(List<ProgrammeItem> items, List<ProgrammeItem> ended, WorkingDay day, boolean hoursKnown, int version) {

    private static final int MANY = 5;

    /** Those that may be done now. */
    public List<ProgrammeItem> active() {
        return items.stream().filter(i -> !i.held()).toList();
    }

    /** Those that a red flag holds back. */
    public List<ProgrammeItem> held() {
        return items.stream().filter(ProgrammeItem::held).toList();
    }

    /** Minutes on a day on which all of them are done, rounded to whole minutes. */
    public long minutes() {
        return Math.round(active().stream().mapToDouble(ProgrammeItem::minutesADay).sum());
    }

    public long minutesAtWork() {
        return Math.round(deskMinutes());
    }

    /** Share of the working day, whole per cent. */
    public long shareOfTheDay() {
        return Math.round(100 * day.share(deskMinutes()));
    }

    private double deskMinutes() {
        return active().stream().filter(i -> i.given().dose().isAtTheDesk()).mapToDouble(ProgrammeItem::minutesADay).sum();
    }

    /** The working day, in words, with what it rests on. */
    public String dayWords() {
        String hours = Range.of(Math.round(day.hours() * 10) / 10.0).shown();
        return hours + " h" + (hoursKnown ? "" : ", taken as usual: the hours a week are not noted");
    }

    /** More than five at a time lowers how well they are kept. */
    public boolean many() {
        return active().size() > MANY;
    }

    /** Stop rules of the exercises given, besides the global ones. */
    public Set<String> stopRules() {
        Set<String> rules = new LinkedHashSet<>();
        active().forEach(i -> rules.addAll(i.exercise().stopRules()));
        return rules;
    }

    public String stopRuleWords() {
        return String.join("; ", stopRules());
    }
}
