package org.steadwork.casefile;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.steadwork.casefile.workplan.GradedReturn;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Reads and shows the terms of a graded return. */
final class WorkPlanForm {

    private static final BigDecimal LEAST_HOURS = new BigDecimal("0.5");
    private static final BigDecimal MOST_HOURS = new BigDecimal("100");
    private static final BigDecimal HOUR = new BigDecimal("60");
    private static final String WHOLE = "whole";
    private static final String HALF = "half";

    private WorkPlanForm() {
    }

    /** The days of a week as they are sent and shown. */
    static List<Option> days() {
        return Arrays.stream(DayOfWeek.values()).map(day -> new Option(day.name().toLowerCase(Locale.ROOT),
                day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))).toList();
    }

    static List<Option> roundings() {
        return List.of(new Option(HALF, "half hours"), new Option(WHOLE, "whole hours"));
    }

    /** Reads what was typed; null when something is wrong, with its errors noted. A later plan says why it replaces the one before. */
    static WorkPlanTerms read(Form form, CaseFile file, LocalDate today, boolean first) {
        LocalDate starts = form.requiredDate("startsOn", "First day");
        if (starts != null && (starts.isBefore(file.openedOn()) || starts.isAfter(today.plusYears(1)))) {
            form.error("startsOn", "A plan starts between the opening of the case, " + Dates.shown(file.openedOn()) + ", and a year from now. You entered "
                    + Dates.shown(starts) + ".");
        }
        BigDecimal hours = required(form, "normalHours", "Usual hours", form.decimal("normalHours", "Usual hours", LEAST_HOURS, MOST_HOURS, 2, "h"));
        Integer percent = required(form, "startPercent", "The start", form.integer("startPercent", "The start", 1, 99));
        Integer weeks = required(form, "weeks", "The number of weeks", form.integer("weeks", "The number of weeks", 1, 26));
        String rounding = form.value("rounding");
        if (!rounding.equals(WHOLE) && !rounding.equals(HALF)) {
            form.error("rounding", "Rounding: choose half or whole hours.");
        }
        List<DayOfWeek> days = Arrays.stream(DayOfWeek.values()).filter(day -> form.is("day", day.name().toLowerCase(Locale.ROOT))).toList();
        if (days.isEmpty()) {
            form.error("day", "Choose at least one working day.");
        } else if (hours != null && minutes(hours) > days.size() * 24 * 60) {
            form.error("normalHours", hours.toPlainString() + " h do not fit into " + days.size() + (days.size() == 1 ? " day." : " days."));
        }
        String restrictions = form.text("restrictions", 600);
        String rule = form.requiredText("stepRule", "The step rule", 800);
        String with = form.requiredText("agreedWith", "Who agreed", 200);
        LocalDate on = form.requiredDate("agreedOn", "Day of the agreement");
        if (on != null && (on.isBefore(file.openedOn()) || on.isAfter(today))) {
            form.error("agreedOn", "A plan is agreed between the opening of the case, " + Dates.shown(file.openedOn()) + ", and today. You entered "
                    + Dates.shown(on) + ".");
        }
        String why = first ? null : form.requiredText("whyChanged", "Why the plan changes", 300);
        if (form.hasErrors()) {
            return null;
        }
        return new WorkPlanTerms(starts, new GradedReturn(minutes(hours), percent, weeks, rounding.equals(WHOLE) ? 60 : 30), days, restrictions, rule,
                with, on, why);
    }

    /** Shows the form of a first plan, as far as it is known. */
    static Form first(CaseFile file, LocalDate today) {
        BigDecimal hours = file.patient().hoursAWeek();
        return Form.empty().with("version", 0).with("normalHours", hours == null ? "" : hours.stripTrailingZeros().toPlainString()).with("startPercent", 50)
                .with("weeks", 4).with("rounding", HALF).withAll("day", List.of("monday", "tuesday", "wednesday", "thursday", "friday"))
                .with("stepRule", WorkPlanTerms.USUAL_STEP_RULE).with("agreedOn", Dates.shown(today));
    }

    /** Shows the form of a plan that follows another: the same terms, from the step at which the last one was held or put back. */
    static Form next(WorkPlan last, LocalDate today) {
        WorkPlanTerms terms = last.terms();
        Form form = show(terms).with("version", last.number()).with("agreedOn", Dates.shown(today)).with("whyChanged", "").with("agreedWith", "");
        last.steps().stream().filter(step -> step.move() == NextStep.Move.HOLD || step.move() == NextStep.Move.BACK).findFirst().ifPresent(step -> {
            int back = step.move() == NextStep.Move.HOLD ? 1 : 2;
            int week = Math.max(1, step.week() - back);
            int minutes = terms.graded().minutesOfWeek(week);
            int percent = Math.round(100f * minutes / terms.graded().normalWeekMinutes());
            form.with("startsOn", Dates.shown(last.weekRows().get(step.week() - 1).from())).with("startPercent", Math.min(99, percent))
                    .with("weeks", Math.max(1, terms.graded().weeks() - week + 1)).with("whyChanged", step.words());
        });
        return form;
    }

    /** Shows the terms of a plan. */
    static Form show(WorkPlanTerms terms) {
        return Form.empty().with("startsOn", Dates.shown(terms.startsOn()))
                .with("normalHours", new BigDecimal(terms.graded().normalWeekMinutes()).divide(HOUR, 2, java.math.RoundingMode.HALF_UP).stripTrailingZeros()
                        .toPlainString())
                .with("startPercent", terms.graded().startPercent()).with("weeks", terms.graded().weeks())
                .with("rounding", terms.wholeHours() ? WHOLE : HALF)
                .withAll("day", terms.workingDays().stream().map(day -> day.name().toLowerCase(Locale.ROOT)).toList())
                .with("restrictions", terms.restrictions()).with("stepRule", terms.stepRule()).with("agreedWith", terms.agreedWith())
                .with("agreedOn", Dates.shown(terms.agreedOn())).with("whyChanged", terms.whyChanged());
    }

    // hours have two decimals, so a week of 37.33 h is 2240 minutes
    private static int minutes(BigDecimal hours) {
        return hours.multiply(HOUR).setScale(0, java.math.RoundingMode.HALF_UP).intValueExact();
    }

    private static <T> T required(Form form, String field, String label, T read) {
        if (read == null && form.error(field) == null) {
            form.error(field, label + " must be given.");
        }
        return read;
    }
}
