package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.OwnActivities;

/** Puts the scores, ratings and reported pain of a case together into the course of each measure, in three queries. */
@ApplicationScoped
public class Measures {

    public static final String OWN_ACTIVITIES = "psfs";

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    OwnActivityRatings activities;

    @Inject
    SymptomReports reports;

    @Inject
    CaseRegions caseRegions;

    @Inject
    CaseFiles cases;

    /** Returns the courses of all measures that a case has a score of, those of its body regions first, the general ones after. */
    public List<MeasureCourse> of(long caseId) {
        return of(caseId, reports.of(caseId));
    }

    /** As {@link #of(long)}, for a caller that has the symptom reports, the latest first. */
    public List<MeasureCourse> of(long caseId, List<SymptomReport> reported) {
        return courses(reported, scores.of(caseId), ratings(caseId));
    }

    /** As {@link #of(long, List)}, as they stood at the end of a day: what came later is left out. */
    public List<MeasureCourse> of(long caseId, List<SymptomReport> reported, LocalDate day) {
        TreeMap<LocalDate, Map<String, Integer>> rated = new TreeMap<>(ratings(caseId));
        return courses(reported.stream().filter(report -> !report.reportedOn().isAfter(day)).toList(),
                scores.of(caseId).stream().filter(score -> !score.scoredOn().isAfter(day)).toList(), rated.headMap(day, true));
    }

    /** Returns the courses of the open cases of a scope, in four queries for all of them. */
    public Map<CaseFile, List<MeasureCourse>> ofOpenCases(CaseScope scope) {
        Map<Long, List<SymptomReport>> reported = reports.ofOpenCases(scope).stream().collect(Collectors.groupingBy(report -> report.caseFile().id()));
        Map<Long, List<Score>> scored = scores.ofOpenCases(scope).stream().collect(Collectors.groupingBy(score -> score.caseFile().id()));
        Map<Long, List<ActivityRating>> rated = activities.ratingsOfOpenCases(scope).stream()
                .collect(Collectors.groupingBy(rating -> rating.activity().caseFile().id()));
        Map<CaseFile, List<MeasureCourse>> courses = new LinkedHashMap<>();
        for (CaseFile file : cases.openWithPatients(scope)) {
            courses.put(file, courses(reported.getOrDefault(file.id(), List.of()), scored.getOrDefault(file.id(), List.of()),
                    byDay(rated.getOrDefault(file.id(), List.of()))));
        }
        return courses;
    }

    private List<MeasureCourse> courses(List<SymptomReport> reported, List<Score> scored, Map<LocalDate, Map<String, Integer>> rated) {
        List<String> regions = caseRegions.of(reported);
        Map<String, List<Score>> byInstrument = new LinkedHashMap<>();
        for (Score score : scored) {
            byInstrument.computeIfAbsent(score.instrument(), key -> new ArrayList<>()).add(score);
        }
        List<MeasureCourse> courses = new ArrayList<>();
        for (Instrument instrument : instruments.all()) {
            List<MeasureCourse.Point> points = points(instrument, byInstrument.getOrDefault(instrument.key(), List.of()), reported);
            if (!points.isEmpty()) {
                courses.add(course(instrument, points, regions));
            }
        }
        if (!rated.isEmpty()) {
            courses.add(ownActivities(rated, regions));
        }
        List<Instrument> order = instruments.all();
        courses.sort(Comparator.comparing((MeasureCourse course) -> course.instrument().regions().isEmpty())
                .thenComparing(course -> !course.instrument().outcome()).thenComparingInt(course -> order.indexOf(course.instrument())));
        return courses;
    }

    /** Returns the course of one measure, with no points when there is no score. */
    public MeasureCourse empty(Instrument instrument, Collection<String> regions) {
        return new MeasureCourse(instrument, region(instrument, regions), List.of(), Optional.empty(), Optional.empty(), "");
    }

    /** Returns the ratings of own activities by day, each by the number of its activity. */
    Map<LocalDate, Map<String, Integer>> ratings(long caseId) {
        return byDay(activities.ratings(caseId));
    }

    private static Map<LocalDate, Map<String, Integer>> byDay(List<ActivityRating> ratings) {
        Map<LocalDate, Map<String, Integer>> rated = new TreeMap<>();
        for (ActivityRating rating : ratings) {
            rated.computeIfAbsent(rating.ratedOn(), day -> new HashMap<>()).put(String.valueOf(rating.activity().id()), rating.rating());
        }
        return rated;
    }

    // A score entered for a day goes before the pain of that day's symptom report.
    private static List<MeasureCourse.Point> points(Instrument instrument, List<Score> list, List<SymptomReport> reported) {
        Map<LocalDate, MeasureCourse.Point> points = new TreeMap<>();
        for (SymptomReport report : reported) {
            Integer rating = ReportedPain.of(report).rating(instrument.key());
            if (rating != null) {
                points.put(report.reportedOn(), new MeasureCourse.Point(report.reportedOn(), rating, false));
            }
        }
        // scores of two versions of a form never make one series: the latest version counts
        String version = list.isEmpty() ? "" : list.get(list.size() - 1).instrumentVersion();
        list.stream().filter(score -> score.value() != null && score.instrumentVersion().equals(version))
                .forEach(score -> points.put(score.scoredOn(), new MeasureCourse.Point(score.scoredOn(), score.value(), score.estimated())));
        return List.copyOf(points.values());
    }

    private static MeasureCourse course(Instrument instrument, List<MeasureCourse.Point> points, Collection<String> regions) {
        String region = region(instrument, regions);
        int n = points.size();
        if (n < 2 || !instrument.outcome()) {
            return new MeasureCourse(instrument, region, points, Optional.empty(), Optional.empty(), "");
        }
        double latest = points.get(n - 1).value();
        return new MeasureCourse(instrument, region, points,
                Optional.of(ChangeVerdict.of(instrument, region, points.get(0).value(), latest)),
                Optional.of(ChangeVerdict.of(instrument, region, points.get(n - 2).value(), latest)), "");
    }

    private MeasureCourse ownActivities(Map<LocalDate, Map<String, Integer>> rated, Collection<String> regions) {
        Instrument instrument = instruments.find(OWN_ACTIVITIES).orElseThrow();
        String region = region(instrument, regions);
        List<MeasureCourse.Point> points = new ArrayList<>();
        rated.forEach((day, ratings) -> OwnActivities.mean(ratings).ifPresent(mean -> points.add(new MeasureCourse.Point(day, mean, false))));
        List<Map<String, Integer>> days = List.copyOf(rated.values());
        Map<String, Integer> latest = days.get(days.size() - 1);
        Optional<OwnActivities> sinceFirst = days.size() < 2 ? Optional.empty() : OwnActivities.compare(days.get(0), latest);
        Optional<OwnActivities> sinceLast = days.size() < 2 ? Optional.empty() : OwnActivities.compare(days.get(days.size() - 2), latest);
        String comparison = sinceFirst.map(c -> "Compared on the " + c.shared().size() + " activities rated at both times.")
                .orElse(days.size() < 2 ? "" : "Fewer than two activities were rated at both times.");
        return new MeasureCourse(instrument, region, points, sinceFirst.map(c -> verdict(instrument, region, c)),
                sinceLast.map(c -> verdict(instrument, region, c)), comparison);
    }

    private static ChangeVerdict verdict(Instrument instrument, String region, OwnActivities compared) {
        return ChangeVerdict.of(instrument, region, compared.earlierMean(), compared.laterMean());
    }

    private static String region(Instrument instrument, Collection<String> regions) {
        return regions.stream().filter(instrument::forRegion).findFirst()
                .orElse(instrument.regions().isEmpty() ? "" : instrument.regions().get(0));
    }
}
