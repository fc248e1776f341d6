package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.OwnProgrammes;
import org.steadwork.exercise.dayplan.Exercise;

/** What a patient ticked on the own page, week by week, with its gaps; patient-reported. */
@ApplicationScoped
public class TickedWeeks {

    @Inject
    OwnLinks links;

    @Inject
    OwnProgrammes programmes;

    @Inject
    SessionTicks ticks;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Clock clock;

    OwnWeeks of(CaseFile file, LocalDate day, LocalDate firstLink) {
        List<SessionTick> ticked = ticks.since(file.id(), day.minusWeeks(OwnWeeks.WEEKS).plusDays(1)).stream().filter(tick -> !tick.doneOn().isAfter(day)).toList();
        return OwnWeeks.of(programmes.of(file), ticked, day, firstLink);
    }

    OwnWeeks of(CaseFile file) {
        return of(file, LocalDate.now(clock), firstLink(file));
    }

    /**
     * Returns a sentence for each exercise given now, about the seven days up to a day, and one for each session of what was suspended
     * or ended by then; empty where there was no page to tick on.
     */
    public List<String> lines(CaseFile file, LocalDate day) {
        LocalDate first = firstLink(file);
        if (first == null || first.isAfter(day)) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        OwnWeeks weeks = of(file, day, first);
        weeks.rows().stream().filter(row -> weeks.latest(row).told()).forEach(row -> lines.add(row.name() + ": " + words(weeks.latest(row))));
        ticks.meanwhile(file.id(), day.minusDays(6)).stream().filter(tick -> !tick.doneOn().isAfter(day)).map(this::besides).distinct().forEach(lines::add);
        return lines;
    }

    private static String words(OwnWeeks.Cell cell) {
        String gaps = cell.daysWithout() == 0 ? ", every day" : ", nothing on " + cell.daysWithout() + " of " + cell.days() + (cell.days() == 1 ? " day" : " days");
        return cell.words() + " sessions" + gaps + (cell.highestPain() == null ? "" : ", pain after up to " + cell.highestPain());
    }

    private String besides(SessionTick tick) {
        String key = tick.prescription().exerciseKey();
        return catalogue.find(key).map(Exercise::name).orElse(key) + ": done though " + tick.meanwhile().label();
    }

    private LocalDate firstLink(CaseFile file) {
        return links.ofCase(file.id()).stream().map(link -> LocalDate.ofInstant(link.madeAt(), clock.getZone())).min(LocalDate::compareTo).orElse(null);
    }
}
