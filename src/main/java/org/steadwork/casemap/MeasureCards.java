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
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.Shown;
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
        Instrument instrument = course.instrument();
        String words = course.sinceFirst().map(verdict -> capital(verdict.kind().words()))
                .orElse(course.points().size() < 2 ? "One score so far" : "Not comparable");
        String change = course.sinceFirst().map(verdict -> Shown.change(instrument, verdict.change())).orElse(null);
        String now = Shown.value(instrument, course.latest().orElseThrow().value());
        String was = course.points().size() < 2 ? "" : "was " + Shown.value(instrument, course.points().get(0).value()) + ": ";
        return new MapMeasure(main, instrument.label(), change, words, course.basis(), now, was + words.toLowerCase(Locale.ROOT),
                trend(course, days), href);
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

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
