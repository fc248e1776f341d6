package org.steadwork.exercise;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.web.Form;

/**
 * A working day as typed.
 *
 * @param frame null when something is wrong
 */
record DayPlanForm(DayFrame frame, Set<DayOfWeek> days, Integer morningAt, Integer eveningAt, boolean discreet) {

    /** Rows for fixed times. */
    static final int ROWS = 5;

    private static final int GRID_MINUTES = 5;
    private static final int LONGEST_LABEL = 60;

    /** A fixed time with the row it was typed in. */
    private record Typed(int row, FixedBlock block) {
    }

    static DayPlanForm read(Form form) {
        Integer from = required(form, "from", "Work begins");
        Integer to = required(form, "to", "Work ends");
        if (from != null && to != null && to <= from) {
            form.error("to", "Work must end after it begins, on the same day. You entered " + form.value("from") + " to " + form.value("to") + ".");
        }
        Set<DayOfWeek> days = new TreeSet<>();
        for (String name : form.values("days")) {
            for (DayOfWeek day : DayOfWeek.values()) {
                if (day.name().toLowerCase(Locale.ROOT).equals(name)) {
                    days.add(day);
                }
            }
        }
        if (days.isEmpty()) {
            form.error("days", "Tick at least one day worked.");
        }
        Integer spell = requiredNumber(form, "spell", "Longest sitting spell", 20, 120);
        Integer pause = requiredNumber(form, "pause", "Length of a break", 5, 30);
        Integer morning = time(form, "morning", "Exercises before work");
        Integer evening = time(form, "evening", "Exercises after work");
        List<FixedBlock> blocks = blocks(form, from, to);
        DayFrame frame = form.hasErrors() ? null : new DayFrame(from, to, blocks, spell, pause, GRID_MINUTES);
        return new DayPlanForm(frame, days, morning, evening, form.ticked("discreet"));
    }

    static Form show(DayPlan plan) {
        DayFrame frame = plan.frame();
        Form form = Form.empty().with("version", plan.version()).with("from", ClockTime.shown(frame.from())).with("to", ClockTime.shown(frame.to()))
                .withAll("days", plan.workDays().stream().map(day -> day.name().toLowerCase(Locale.ROOT)).toList())
                .with("spell", frame.longestSpell()).with("pause", frame.breakMinutes())
                .with("morning", plan.morningAt() == null ? null : ClockTime.shown(plan.morningAt()))
                .with("evening", plan.eveningAt() == null ? null : ClockTime.shown(plan.eveningAt()))
                .with("discreet", plan.discreet() ? "yes" : null);
        for (int i = 0; i < frame.blocks().size(); i++) {
            FixedBlock block = frame.blocks().get(i);
            form.with("from" + (i + 1), ClockTime.shown(block.from())).with("to" + (i + 1), ClockTime.shown(block.to()))
                    .with("kind" + (i + 1), block.kind().name().toLowerCase(Locale.ROOT)).with("what" + (i + 1), block.label());
        }
        return form;
    }

    private static List<FixedBlock> blocks(Form form, Integer workFrom, Integer workTo) {
        List<Typed> typed = new ArrayList<>();
        for (int row = 1; row <= ROWS; row++) {
            String label = form.text("what" + row, LONGEST_LABEL);
            FixedBlock.Kind kind = form.choice("kind" + row, "Kind", FixedBlock.Kind.class);
            if (!form.has("from" + row) && !form.has("to" + row) && label == null && kind == null) {
                continue;
            }
            Integer from = required(form, "from" + row, "From");
            Integer to = required(form, "to" + row, "To");
            if (kind == null && form.error("kind" + row) == null) {
                form.error("kind" + row, "Choose what the body does meanwhile.");
            }
            if (from == null || to == null || kind == null) {
                continue;
            }
            if (to <= from) {
                form.error("to" + row, "A fixed time must end after it begins. You entered " + form.value("from" + row) + " to " + form.value("to" + row) + ".");
            } else if (workFrom != null && workTo != null && (from < workFrom || to > workTo)) {
                form.error("from" + row, "This lies outside the working day, " + ClockTime.shown(workFrom) + " to " + ClockTime.shown(workTo) + ".");
            } else {
                typed.add(new Typed(row, new FixedBlock(from, to, kind, label == null ? kind.label() : label.replace('\n', ' '))));
            }
        }
        typed.sort(Comparator.comparingInt(t -> t.block().from()));
        for (int i = 1; i < typed.size(); i++) {
            FixedBlock before = typed.get(i - 1).block();
            if (typed.get(i).block().from() < before.to()) {
                form.error("from" + typed.get(i).row(), "This begins before “" + before.label() + "” ends, at " + ClockTime.shown(before.to()) + ".");
            }
        }
        return typed.stream().map(Typed::block).toList();
    }

    private static Integer requiredNumber(Form form, String field, String label, int least, int most) {
        Integer number = form.integer(field, label, least, most);
        if (number == null && form.error(field) == null) {
            form.error(field, label + " is missing. Enter minutes from " + least + " to " + most + ".");
        }
        return number;
    }

    private static Integer required(Form form, String field, String label) {
        Integer time = time(form, field, label);
        if (time == null && form.error(field) == null) {
            form.error(field, label + " is missing. Enter a time such as 08:30.");
        }
        return time;
    }

    private static Integer time(Form form, String field, String label) {
        if (!form.has(field)) {
            return null;
        }
        Integer time = ClockTime.parse(form.value(field));
        if (time == null) {
            String given = form.value(field);
            form.error(field, label + " must be a time of the day, for example 08:30. You entered “" + given.substring(0, Math.min(40, given.length())) + "”.");
        }
        return time;
    }
}
