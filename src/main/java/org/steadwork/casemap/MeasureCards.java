package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.drawing.PlanMark;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.MeasureTrends;
import org.steadwork.outcome.MeasureView;
import org.steadwork.outcome.Measures;

/** Lays the measures of a case on the map; the first outcome measure, which is the one of its body region, leads. */
@ApplicationScoped
class MeasureCards implements MapPart {

    @Inject
    Measures measures;

    @Inject
    MeasureTrends trends;

    @Inject
    Visits visits;

    @Inject
    Clock clock;

    @Override
    public List<MapMeasure> measures(CaseFile caseFile) {
        List<MeasureCourse> courses = measures.of(caseFile.id()).stream()
                .filter(course -> course.instrument().outcome() && !course.points().isEmpty()).toList();
        List<Visit> held = visits.of(caseFile.id());
        List<PlanMark> marks = courses.isEmpty() ? List.of() : trends.marks(caseFile, LocalDate.now(clock));
        List<MapMeasure> result = new ArrayList<>();
        for (MeasureCourse course : courses) {
            result.add(measure(result.isEmpty(), course, held, marks, CaseTab.OUTCOMES.href(caseFile.id())));
        }
        return result;
    }

    private static MapMeasure measure(boolean main, MeasureCourse course, List<Visit> held, List<PlanMark> marks, String href) {
        MeasureView view = new MeasureView(course, "");
        String change = course.sinceFirst().isPresent() ? view.by() : null;
        String beside = (view.was().isEmpty() ? "" : view.was() + ": ") + view.words().toLowerCase(Locale.ROOT);
        return new MapMeasure(main, view.label(), change, view.words(), view.basis(), view.now(), beside,
                MeasureTrends.of("map", course, held, marks), href);
    }
}
