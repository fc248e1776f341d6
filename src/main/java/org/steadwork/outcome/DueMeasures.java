package org.steadwork.outcome;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.outcome.scoring.About;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Dates;

/** What is due by its schedule on a day, and nothing else. */
@ApplicationScoped
public class DueMeasures {

    /**
     * One measure that is due.
     *
     * @param key of the instrument
     * @param why since when, in words
     * @param single true for one number, false for a form of several items
     * @param href where it is entered
     */
    public record Due(String key, String label, String why, boolean single, String href) {
    }

    @Inject
    Instruments instruments;

    @Inject
    Measures measures;

    @Inject
    PhysicalMeasurements physical;

    @Inject
    Goals goals;

    @Inject
    SymptomReports reports;

    @Inject
    CaseRegions caseRegions;

    @Inject
    Visits visits;

    private List<DueContent.Asked> asked;
    private int goalsEveryDays;

    @PostConstruct
    void read() {
        asked = DueContent.read(instruments);
        goalsEveryDays = DueContent.goalsEveryDays();
    }

    /** Returns what is due in a case on a day, in a fixed number of queries. */
    public List<Due> of(long caseId, LocalDate on) {
        List<SymptomReport> reported = reports.of(caseId);
        return of(caseId, on, measures.of(caseId, reported), caseRegions.of(reported), visits.of(caseId));
    }

    /** As {@link #of(long, LocalDate)}, for a caller that has the courses, the regions and the visits. */
    List<Due> of(long caseId, LocalDate on, List<MeasureCourse> courses, Collection<String> regions, List<Visit> all) {
        long held = all.stream().filter(visit -> visit.attendance() == Attendance.ATTENDED && visit.visitedOn().isBefore(on)).count();
        List<Due> due = new ArrayList<>();
        for (Instrument instrument : instruments.all()) {
            Optional<MeasureCourse> course = courses.stream().filter(c -> c.instrument().equals(instrument)).findFirst();
            boolean taken = course.filter(c -> c.on(on).isPresent()).isPresent();
            if (!taken && scheduled(instrument, course, courses, regions, held + 1) && course.map(c -> c.due(on)).orElse(true)) {
                due.add(due(caseId, on, instrument, course));
            }
        }
        goals(caseId, on).ifPresent(due::add);
        measured(caseId, on, instruments.grip().about(), physical.grips(caseId).stream().map(GripMeasurement::testedOn)).ifPresent(due::add);
        measured(caseId, on, instruments.rangeOfMotion().about(), physical.motions(caseId).stream().map(MotionMeasurement::testedOn)).ifPresent(due::add);
        return due;
    }

    /** Goals that stand and were neither set nor rated for so long, and not yet on the day. */
    private Optional<Due> goals(long caseId, LocalDate on) {
        Map<Long, LocalDate> last = new HashMap<>();
        goals.of(caseId).stream().filter(goal -> goal.givenUpOn() == null && goal.setOn().isBefore(on)).forEach(goal -> last.put(goal.id(), goal.setOn()));
        if (last.isEmpty()) {
            return Optional.empty();
        }
        int all = last.size();
        goals.ratings(caseId).stream().filter(rating -> !rating.ratedOn().isAfter(on)).forEach(rating -> last.computeIfPresent(rating.goal().id(), (id, day) -> rating.ratedOn()));
        List<LocalDate> waiting = last.values().stream().filter(day -> !day.plusDays(goalsEveryDays).isAfter(on)).sorted().toList();
        return waiting.isEmpty() ? Optional.empty() : Optional.of(new Due("gas", "Goals", waiting.size() + " of " + all + (all == 1 ? " goal" : " goals") + " to rate, the longest set or rated on "
                + Dates.shown(waiting.get(0)), false, "/cases/" + caseId + "/goals"));
    }

    // grip and motion are for whoever decided once to measure them: only what was begun comes round again
    private static Optional<Due> measured(long caseId, LocalDate on, About about, Stream<LocalDate> days) {
        return days.filter(day -> !day.isAfter(on)).max(LocalDate::compareTo)
                .filter(last -> last.isBefore(on) && about.everyDays() > 0 && !last.plusDays(about.everyDays()).isAfter(on))
                .map(last -> new Due(about.key(), about.label(), "last on " + Dates.shown(last) + ", " + about.scheduleWords(), false,
                        "/cases/" + caseId + "/grip-and-motion?on=" + on));
    }

    private boolean scheduled(Instrument instrument, Optional<MeasureCourse> course, List<MeasureCourse> courses, Collection<String> regions, long visit) {
        if (course.isPresent()) {
            return true;
        }
        Optional<DueContent.Asked> always = asked.stream().filter(a -> a.instrument().equals(instrument.key())).findFirst();
        if (always.isPresent()) {
            return visit >= always.get().fromVisit() && (always.get().toVisit() == 0 || visit <= always.get().toVisit())
                    && courses.stream().noneMatch(other -> always.get().insteadOf().contains(other.instrument().key()));
        }
        // one region measure is enough to begin with: the one of the region that hurts most
        return instruments.leads(instrument, regions.stream().limit(1).toList())
                && courses.stream().noneMatch(other -> other.instrument().outcome() && !other.instrument().regions().isEmpty());
    }

    private static Due due(long caseId, LocalDate on, Instrument instrument, Optional<MeasureCourse> course) {
        String why = course.flatMap(c -> c.points().stream().filter(point -> point.on().isBefore(on)).reduce((a, b) -> b))
                .map(last -> "last on " + Dates.shown(last.on()) + ", " + instrument.scheduleWords()).orElse("not taken yet, " + instrument.scheduleWords());
        boolean single = instrument.items().size() == 1 || instrument.key().equals(Measures.OWN_ACTIVITIES);
        return new Due(instrument.key(), instrument.label(), why, single, "/cases/" + caseId + "/outcomes"
                + (single ? "?on=" + on + "#scores" : "/" + instrument.key() + "?on=" + on));
    }
}
