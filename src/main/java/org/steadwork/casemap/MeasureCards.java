package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.MapPart;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.drawing.Trend;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.MeasureView;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.scoring.Direction;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Threshold;

/** Lays the measures of a case on the map; the first outcome measure, which is the one of its body region, leads. */
@ApplicationScoped
class MeasureCards implements MapPart {

    @Inject
    Measures measures;

    @Inject
    Visits visits;

    @Override
    public List<MapMeasure> measures(CaseFile caseFile) {
        List<MeasureCourse> courses = measures.of(caseFile.id()).stream()
                .filter(course -> course.instrument().outcome() && !course.points().isEmpty()).toList();
        List<LocalDate> days = visits.of(caseFile.id()).stream().filter(visit -> visit.attendance() != Attendance.PLANNED).map(Visit::visitedOn).toList();
        List<MapMeasure> result = new ArrayList<>();
        for (MeasureCourse course : courses) {
            result.add(measure(result.isEmpty(), course, days, CaseTab.OUTCOMES.href(caseFile.id())));
        }
        return result;
    }

    private static MapMeasure measure(boolean main, MeasureCourse course, List<LocalDate> days, String href) {
        MeasureView view = new MeasureView(course, "");
        String change = course.sinceFirst().isPresent() ? view.by() : null;
        String beside = (view.was().isEmpty() ? "" : view.was() + ": ") + view.words().toLowerCase(Locale.ROOT);
        return new MapMeasure(main, view.label(), change, view.words(), view.basis(), view.now(), beside, trend(course, days), href);
    }

    /** The course over the visits held; a visit without a score stays open. */
    private static Trend trend(MeasureCourse course, List<LocalDate> held) {
        Map<LocalDate, Double> scores = new TreeMap<>();
        held.forEach(day -> scores.put(day, null));
        course.points().forEach(point -> scores.put(point.on(), point.value()));
        Instrument instrument = course.instrument();
        double first = course.points().get(0).value();
        return new Trend("map-" + instrument.key().replace('_', '-'), instrument.label(), instrument.unit(), instrument.lowest(),
                instrument.highest(), instrument.direction() == Direction.LOWER_BETTER, instrument.highest() - instrument.lowest() <= 5 ? 2 : 1,
                scores.entrySet().stream().map(e -> new Trend.Visit(e.getKey(), e.getValue())).toList(), amount(course.error(), first),
                amount(course.importance(), first));
    }

    /** A percentage of a baseline of nought is no amount that can be drawn. */
    private static Double amount(Optional<Threshold> threshold, double baseline) {
        return threshold.map(t -> t.points(baseline)).filter(points -> points > 0).orElse(null);
    }
}
