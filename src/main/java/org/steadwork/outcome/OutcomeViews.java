package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.drawing.Trend;
import org.steadwork.drawing.TrendChart;
import org.steadwork.outcome.scoring.Direction;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Gathers what the page of the outcomes shows. */
@ApplicationScoped
class OutcomeViews {

    /** The usual gap between two reviews (common practice). */
    private static final double WEEKS_TO_NEXT_REVIEW = 2;

    @Inject
    Measures measures;

    @Inject
    ScoreGrids grids;

    @Inject
    Instruments instruments;

    @Inject
    Goals goals;

    @Inject
    OwnActivityRatings activities;

    @Inject
    SymptomReports reports;

    @Inject
    CaseRegions caseRegions;

    @Inject
    Visits visits;

    OutcomeView of(long caseId, LocalDate on, Form typed) {
        List<SymptomReport> reported = reports.of(caseId);
        List<String> regions = caseRegions.of(reported);
        List<MeasureCourse> courses = measures.of(caseId, reported);
        List<Visit> held = visits.of(caseId);
        ScoreGrid grid = grids.of(caseId, on, courses, regions, held);
        List<MeasureCourse> outcomes = courses.stream().filter(course -> course.instrument().outcome()).toList();
        List<MeasureView> views = outcomes.stream()
                .map(course -> new MeasureView(course, chart(course, held, course.equals(outcomes.get(0))))).toList();
        List<Instrument> others = instruments.all().stream().filter(instrument -> !instrument.key().equals(Measures.OWN_ACTIVITIES)
                && grid.rows().stream().noneMatch(row -> ("s_" + instrument.key()).equals(row.field()))).toList();
        List<Goal> set = goals.of(caseId);
        boolean goalsMet = !set.isEmpty() && set.stream().allMatch(goal -> goal.state() == GoalState.MET || goal.state() == GoalState.GIVEN_UP);
        List<String> standstill = outcomes.stream().filter(course -> course.plateau(WEEKS_TO_NEXT_REVIEW, goalsMet))
                .map(course -> course.instrument().label()).toList();
        Form form = typed == null ? show(grid) : typed;
        return new OutcomeView(caseId, form, grid, views, set, others, standstill, activities.activities(caseId).size() < OwnActivity.MOST);
    }

    /** Puts what is stored of the goals into a form. */
    Form goals(long caseId) {
        Form form = Form.empty();
        goals.of(caseId).forEach(goal -> form.with("state_" + goal.id(), goal.state().name().toLowerCase(Locale.ROOT))
                .with("where_" + goal.id(), goal.whereNow()).with("v_" + goal.id(), goal.version()));
        return form;
    }

    /** Puts what is stored for the day into a form. */
    Form show(ScoreGrid grid) {
        Form form = goals(grid.caseId()).with("version", grid.version()).with("on", Dates.shown(grid.on()));
        grid.rows().stream().filter(row -> row.field() != null).forEach(row -> form.with(row.field(), row.now()));
        return form;
    }

    /** Draws a course over the visits; a visit without a score stays open. */
    static String chart(MeasureCourse course, List<Visit> held, boolean large) {
        if (course.points().isEmpty()) {
            return "";
        }
        Map<LocalDate, Double> days = new TreeMap<>();
        held.stream().filter(visit -> visit.attendance() != Attendance.PLANNED).forEach(visit -> days.put(visit.visitedOn(), null));
        course.points().forEach(point -> days.put(point.on(), point.value()));
        double first = course.points().get(0).value();
        Instrument instrument = course.instrument();
        Trend trend = new Trend("c-" + instrument.key().replace('_', '-'), instrument.label(), instrument.unit(), instrument.lowest(),
                instrument.highest(), instrument.direction() == Direction.LOWER_BETTER, decimals(course),
                days.entrySet().stream().map(day -> new Trend.Visit(day.getKey(), day.getValue())).toList(),
                course.error().map(error -> points(error, first)).orElse(null), course.importance().map(i -> points(i, first)).orElse(null));
        return large ? TrendChart.figure(trend) : TrendChart.multiple(trend);
    }

    // scores that are all whole are written without a decimal
    private static int decimals(MeasureCourse course) {
        return Shown.decimals(course.instrument(), course.points().stream().mapToDouble(MeasureCourse.Point::value));
    }

    // a percentage of a baseline of nought is no amount that can be drawn
    private static Double points(Threshold threshold, double baseline) {
        double points = threshold.points(baseline);
        return points > 0 ? points : null;
    }
}
