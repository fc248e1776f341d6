package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.drawing.TrendChart;

/** The measures of a case as pages show them, each with its small drawing. */
@ApplicationScoped
public class MeasureViews {

    @Inject
    Measures measures;

    @Inject
    Visits visits;

    /**
     * Returns the measures on which change is judged as they stood at the end of a day, the leading one first.
     *
     * @param reports the symptom reports of the case, the latest first
     */
    public List<MeasureView> of(CaseFile file, List<SymptomReport> reports, LocalDate day) {
        List<Visit> held = visits.of(file.id()).stream().filter(visit -> !visit.visitedOn().isAfter(day)).toList();
        return measures.of(file.id(), reports, day).stream().filter(course -> course.instrument().outcome())
                .map(course -> new MeasureView(course, TrendChart.multiple(MeasureTrends.of("c", course, held, List.of())))).toList();
    }
}
