package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.casefile.WorkTimelineView;
import org.steadwork.drawing.PlanMark;
import org.steadwork.drawing.Trend;
import org.steadwork.drawing.TrendChart;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Gathers what the page of the outcomes shows. */
@ApplicationScoped
class OutcomeViews {

    @Inject
    Measures measures;

    @Inject
    MeasureTrends trends;

    @Inject
    DueMeasures dueMeasures;

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
    WorkStatuses statuses;

    @Inject
    Visits visits;

    OutcomeView of(CaseFile file, LocalDate on, LocalDate today, Form typed) {
        long id = file.id();
        List<SymptomReport> reported = reports.of(id);
        List<String> regions = caseRegions.of(reported);
        List<MeasureCourse> courses = measures.of(id, reported);
        List<Visit> held = visits.of(id);
        List<DueMeasures.Due> due = dueMeasures.of(id, on, courses, regions, held);
        ScoreGrid grid = grids.of(id, on, courses, regions, held, due.stream().map(DueMeasures.Due::key).toList());
        List<MeasureCourse> outcomes = courses.stream().filter(course -> course.instrument().outcome()).toList();
        List<PlanMark> marks = trends.marks(file, today);
        List<MeasureView> views = outcomes.stream().map(course -> new MeasureView(course, chart(course, held, marks, course.equals(outcomes.get(0)))))
                .toList();
        List<Instrument> others = instruments.all().stream().filter(instrument -> !instrument.key().equals(Measures.OWN_ACTIVITIES)
                && grid.rows().stream().noneMatch(row -> row.label().equals(instrument.label()))).toList();
        List<Goal> set = goals.of(id);
        List<String> standstill = outcomes.stream().filter(course -> Standstill.reached(course, file.nextReviewOn(), set)).map(Standstill::words).toList();
        Rating rating = outcomes.isEmpty() ? null : Rating.beside(outcomes.get(0), courses).orElse(null);
        return new OutcomeView(id, typed == null ? show(grid) : typed, grid, views, set, others, standstill,
                activities.activities(id).size() < OwnActivity.MOST, rating, due, WorkTimelineView.of(statuses.of(id), file, today));
    }

    /** Puts what is stored for the day into a form. */
    Form show(ScoreGrid grid) {
        Form form = Form.empty().with("version", grid.version()).with("on", Dates.shown(grid.on()));
        grid.rows().stream().filter(row -> row.field() != null).forEach(row -> form.with(row.field(), row.now()));
        return form;
    }

    private static String chart(MeasureCourse course, List<Visit> held, List<PlanMark> marks, boolean large) {
        Trend trend = MeasureTrends.of("c", course, held, marks);
        return large ? TrendChart.figure(trend) : TrendChart.multiple(trend);
    }
}
