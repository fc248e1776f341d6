package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.dayplan.DayPlanner;
import org.steadwork.exercise.dayplan.DeskExercise;

/** Lays the programme of a case on the patient's working day. What a red flag holds back is left out. */
@ApplicationScoped
public class PlannedDays {

    private static final int MINUTES = 60;
    private static final int CLOSEST_MINUTES = 15;

    @Inject
    DayPlans plans;

    @Inject
    Programmes programmes;

    /** Empty while the working day was not described. */
    public Optional<DayPlanView> of(CaseFile file) {
        return plans.ofCase(file.id()).map(plan -> of(plan, programmes.of(file)));
    }

    DayPlanView of(DayPlan plan, Programme programme) {
        List<ProgrammeItem> desk = programme.active().stream().filter(i -> i.given().dose().isAtTheDesk()).toList();
        List<DeskExercise> exercises = desk.stream().map(i -> new DeskExercise(key(i), everyMinutes(i), i.given().dose().secondsASession(i.exercise().tempo()))).toList();
        Map<String, String> names = desk.stream().collect(Collectors.toMap(PlannedDays::key, PlannedDays::name));
        List<DayPlanView.Home> home = programme.active().stream().filter(i -> !i.given().dose().isAtTheDesk())
                .map(i -> new DayPlanView.Home(name(i), i.inWords())).toList();
        return new DayPlanView(plan, DayPlanner.plan(plan.frame(), exercises), names, home);
    }

    private static String key(ProgrammeItem item) {
        return String.valueOf(item.given().id());
    }

    private static String name(ProgrammeItem item) {
        return item.exercise().name() + (item.sideWords().isEmpty() ? "" : ", " + item.sideWords());
    }

    private static int everyMinutes(ProgrammeItem item) {
        return Math.max(CLOSEST_MINUTES, (int) Math.round(item.given().dose().everyHours().high() * MINUTES));
    }
}
