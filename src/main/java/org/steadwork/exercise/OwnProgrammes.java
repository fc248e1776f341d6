package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.PlannedDay;

/** Makes of the programme of a case what the patient sees. */
@ApplicationScoped
public class OwnProgrammes {

    private static final int MOST_SLOTS = 12;
    private static final List<List<String>> PARTS_OF_THE_DAY = List.of(List.of("Today"), List.of("Morning", "Evening"), List.of("Morning", "Midday", "Evening"));

    @Inject
    Programmes programmes;

    @Inject
    PlannedDays planned;

    @Inject
    DayPlans plans;

    @Inject
    ExerciseCatalogue catalogue;

    public OwnProgramme of(CaseFile file) {
        Programme programme = programmes.of(file);
        DayPlanView day = plans.ofCase(file.id()).map(plan -> planned.of(plan, programme)).orElse(null);
        List<OwnProgramme.Item> items = programme.active().stream().map(item -> item(item, day)).toList();
        Set<String> ring = new LinkedHashSet<>(catalogue.stopRules().ring());
        ring.addAll(programme.stopRules());
        return new OwnProgramme(items, programme.held().stream().map(held -> held.exercise().name()).toList(), List.copyOf(ring), catalogue.stopRules().emergency());
    }

    private static OwnProgramme.Item item(ProgrammeItem item, DayPlanView day) {
        Prescription given = item.given();
        return new OwnProgramme.Item(given.id(), given.startedOn(), item.exercise().name() + (item.sideWords().isEmpty() ? "" : ", " + item.sideWords()), item.inWords(),
                given.effort(), given.painCeiling(), item.verdict().limits(), given.note(), item.exercise().steps(), item.figure(), slots(item, day),
                item.plannedAWeek());
    }

    /** The hours of the day plan where there is one; else as many sessions as the dose asks for at least. */
    private static List<OwnProgramme.Slot> slots(ProgrammeItem item, DayPlanView day) {
        List<String> when = new ArrayList<>();
        if (day != null && item.given().dose().isAtTheDesk()) {
            String key = String.valueOf(item.given().id());
            day.day().stops().stream().filter(stop -> stop.exercises().contains(key)).map(PlannedDay.Stop::from).map(ClockTime::shown).forEach(when::add);
        }
        int sessions = Math.min(MOST_SLOTS, Math.max(1, item.day().sessionsADay(item.given().dose())));
        if (when.isEmpty() && sessions <= PARTS_OF_THE_DAY.size()) {
            when.addAll(PARTS_OF_THE_DAY.get(sessions - 1));
        }
        if (when.isEmpty()) {
            IntStream.rangeClosed(1, sessions).mapToObj(number -> number + ".").forEach(when::add);
        }
        return IntStream.range(0, when.size()).mapToObj(i -> new OwnProgramme.Slot(i + 1, when.get(i))).toList();
    }
}
