package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.OwnActivities;

/** Lays the scores of a case out as a table. What is absent has a word: not due, not entered, missed; never nought. */
@ApplicationScoped
public class ScoreGrids {

    private static final int EARLIER_DAYS_SHOWN = 5;
    private static final int VERSION_RANGE = 999_999_937;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    OwnActivityRatings activities;

    @Inject
    Measures measures;

    /** Makes the table for entering scores on a day. */
    public ScoreGrid of(long caseId, LocalDate on, List<MeasureCourse> courses, Collection<String> regions, List<Visit> visits,
            Collection<String> due) {
        List<Score> all = scores.of(caseId);
        Map<LocalDate, Map<String, Integer>> ratings = measures.ratings(caseId);
        TreeSet<LocalDate> days = new TreeSet<>(ratings.keySet());
        all.forEach(score -> days.add(score.scoredOn()));
        visits.stream().filter(visit -> visit.attendance() != Attendance.PLANNED).forEach(visit -> days.add(visit.visitedOn()));
        List<LocalDate> earlier = shown(days.headSet(on));
        List<ScoreGrid.Row> rows = new ArrayList<>();
        for (Instrument instrument : offered(courses, all, regions, due)) {
            MeasureCourse course = courses.stream().filter(c -> c.instrument().equals(instrument)).findFirst()
                    .orElseGet(() -> measures.empty(instrument, regions));
            List<Score> own = all.stream().filter(score -> score.instrument().equals(instrument.key())).toList();
            rows.add(row(caseId, course, own, earlier, on, visits, due.contains(instrument.key())));
        }
        for (OwnActivity activity : activities.activities(caseId)) {
            rows.add(row(activity, ratings, earlier, on, visits, due.contains(Measures.OWN_ACTIVITIES)));
        }
        return new ScoreGrid(caseId, on, earlier, rows, version(all, ratings.get(on), on));
    }

    /** Returns a number that changes whenever what is stored for a day changes. */
    public int version(long caseId, LocalDate on) {
        return version(scores.of(caseId), measures.ratings(caseId).get(on), on);
    }

    private static int version(List<Score> all, Map<String, Integer> rated, LocalDate on) {
        String stored = all.stream().filter(score -> score.scoredOn().equals(on)).map(score -> score.instrument() + score.version())
                .collect(Collectors.joining(",")) + (rated == null ? "" : new java.util.TreeMap<>(rated));
        return Math.floorMod(Objects.hash(stored, on), VERSION_RANGE);
    }

    /** The measures offered without asking: what is due, those of the regions, and whatever the case has a score of. */
    private List<Instrument> offered(List<MeasureCourse> courses, List<Score> all, Collection<String> regions, Collection<String> due) {
        return instruments.all().stream().filter(instrument -> !instrument.key().equals(Measures.OWN_ACTIVITIES))
                .filter(instrument -> courses.stream().anyMatch(course -> course.instrument().equals(instrument))
                        || all.stream().anyMatch(score -> score.instrument().equals(instrument.key()))
                        || due.contains(instrument.key())
                        || !instrument.regions().isEmpty() && instruments.leads(instrument, regions))
                .toList();
    }

    private static List<LocalDate> shown(Collection<LocalDate> days) {
        List<LocalDate> all = List.copyOf(days);
        if (all.size() <= EARLIER_DAYS_SHOWN) {
            return all;
        }
        List<LocalDate> shown = new ArrayList<>(all.subList(all.size() - EARLIER_DAYS_SHOWN + 1, all.size()));
        shown.add(0, all.get(0));
        return shown;
    }

    private static ScoreGrid.Row row(long caseId, MeasureCourse course, List<Score> own, List<LocalDate> days, LocalDate on, List<Visit> visits,
            boolean due) {
        Instrument instrument = course.instrument();
        boolean single = instrument.items().size() == 1;
        List<ScoreGrid.Cell> cells = days.stream().map(day -> own.stream().filter(score -> score.scoredOn().equals(day)).findFirst()
                .map(score -> cell(instrument, score)).or(() -> course.on(day).map(point -> new ScoreGrid.Cell(Shown.value(instrument, point.value()), true)))
                .orElseGet(() -> new ScoreGrid.Cell(absence(course, day, visits), false))).toList();
        String reported = course.on(on).filter(point -> own.stream().noneMatch(score -> score.scoredOn().equals(on)))
                .map(point -> Shown.value(instrument, point.value()) + " in the report").orElse("");
        Optional<Score> today = own.stream().filter(score -> score.scoredOn().equals(on)).findFirst();
        String now = today.map(score -> single ? plain(score.answers().get(0)) : cell(instrument, score).text()).orElse("");
        String absent = today.isPresent() ? "" : absence(course, on, visits);
        String change = course.sinceFirst().map(verdict -> Shown.change(instrument, verdict.change())).orElse("\u2013");
        String words = course.sinceFirst().map(ChangeVerdict::kind).map(kind -> capital(kind.words()))
                .orElseGet(() -> course.latest().flatMap(point -> instrument.band(point.value())).map(band -> capital(band.label())).orElse(""));
        return new ScoreGrid.Row(instrument.label(), scale(instrument), cells, single ? "s_" + instrument.key() : null, now, instrument.unit(),
                single ? null : "/cases/" + caseId + "/outcomes/" + instrument.key() + "?on=" + on, absent, reported, change, words,
                instrument.items().get(0).min(), instrument.items().get(0).max(), due);
    }

    private static ScoreGrid.Row row(OwnActivity activity, Map<LocalDate, Map<String, Integer>> ratings, List<LocalDate> days, LocalDate on,
            List<Visit> visits, boolean due) {
        String key = String.valueOf(activity.id());
        List<ScoreGrid.Cell> cells = days.stream().map(day -> {
            Integer rating = ratings.getOrDefault(day, Map.of()).get(key);
            return rating != null ? new ScoreGrid.Cell(rating.toString(), true)
                    : new ScoreGrid.Cell(missed(day, visits) ? "missed" : day.isBefore(activity.namedOn()) ? "not named yet" : "not entered", false);
        }).toList();
        List<Integer> given = ratings.values().stream().map(day -> day.get(key)).filter(Objects::nonNull).toList();
        Optional<ChangeVerdict> verdict = given.size() < 2 ? Optional.empty()
                : Optional.of(OwnActivities.single(given.get(0), given.get(given.size() - 1)));
        String words = verdict.map(v -> v.kind() == ChangeVerdict.Kind.REAL_IMPORTANCE_UNKNOWN ? "Real change, better" : capital(v.kind().words())).orElse("");
        return new ScoreGrid.Row(activity.words(), "own activity, 0\u201310, higher is better", cells, "a_" + key,
                plain(ratings.getOrDefault(on, Map.of()).get(key)), "", null, "not entered", "",
                verdict.map(v -> signed((int) v.change())).orElse("\u2013"), words, 0, 10, due);
    }

    private static ScoreGrid.Cell cell(Instrument instrument, Score score) {
        if (score.value() != null) {
            return new ScoreGrid.Cell(Shown.value(instrument, score.value()) + (score.estimated() ? " est." : ""), true);
        }
        return score.low() != null ? new ScoreGrid.Cell(Shown.amount(score.low()) + " to " + Shown.amount(score.high()), true)
                : new ScoreGrid.Cell("too few answers", false);
    }

    private static String absence(MeasureCourse course, LocalDate day, List<Visit> visits) {
        return missed(day, visits) ? "missed" : course.due(day) ? "not entered" : "not due";
    }

    private static boolean missed(LocalDate day, List<Visit> visits) {
        List<Visit> ofDay = visits.stream().filter(visit -> visit.visitedOn().equals(day)).toList();
        return !ofDay.isEmpty() && ofDay.stream().noneMatch(visit -> visit.attendance() == Attendance.ATTENDED
                || visit.attendance() == Attendance.PLANNED);
    }

    private static String scale(Instrument instrument) {
        String range = Shown.amount(instrument.lowest()) + (instrument.lowest() < 0 ? " to +" : "\u2013") + Shown.withUnit(instrument, Shown.amount(instrument.highest()));
        return range + ", " + (instrument.outcome() ? instrument.direction().words() : instrument.scheduleWords());
    }

    private static String plain(Integer number) {
        return number == null ? "" : number.toString().replace('-', '\u2212');
    }

    private static String signed(int change) {
        return change > 0 ? "+" + change : plain(change);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
