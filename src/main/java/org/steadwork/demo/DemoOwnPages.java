package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.steadwork.content.Entry;
import org.steadwork.exercise.DayPlan;
import org.steadwork.exercise.DayPlans;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.FixedBlock;
import org.steadwork.outcome.Instruments;
import org.steadwork.ownpage.OwnLink;
import org.steadwork.ownpage.OwnLinks;
import org.steadwork.ownpage.OwnReport;
import org.steadwork.ownpage.OwnReportAnswer;
import org.steadwork.ownpage.OwnReportLine;
import org.steadwork.ownpage.OwnReports;
import org.steadwork.ownpage.PainRise;
import org.steadwork.ownpage.SessionTick;
import org.steadwork.ownpage.SessionTicks;

/** The working day laid at a visit, the link given, and what the patient ticked and reported from home after it. */
@ApplicationScoped
class DemoOwnPages implements DemoVisitPart {

    private static final LocalTime TICKED_AT = LocalTime.of(17, 40);
    private static final int GRID_MINUTES = 5;

    @Inject
    DayPlans plans;

    @Inject
    Prescriptions prescriptions;

    @Inject
    OwnLinks links;

    @Inject
    SessionTicks ticks;

    @Inject
    OwnReports reports;

    @Inject
    PainRise pain;

    @Inject
    Instruments instruments;

    @Override
    public int order() {
        return 45;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.entry().entry("day_plan").ifPresent(written -> lay(visit, written));
        visit.entry().entry("own_page").ifPresent(written -> {
            links.make(visit.file(), LocalDate.parse(written.text("until")), visit.clinician().displayName());
            OwnLink link = links.ofCase(visit.file().id()).get(0);
            link.opens(visit.file().patient().birthDate(), at(written, "opened"));
            written.entries("sessions").forEach(done -> tick(visit, done));
            written.entries("reports").forEach(told -> report(visit, told));
        });
    }

    private void lay(DemoVisit visit, Entry written) {
        List<FixedBlock> blocks = written.entries("fixed").stream().map(block -> new FixedBlock(minutes(block, "from"), minutes(block, "to"),
                block.constant("kind", FixedBlock.Kind.class), block.text("label"))).toList();
        DayFrame frame = new DayFrame(minutes(written, "from"), minutes(written, "to"), blocks, written.integer("longest_spell"),
                written.integer("break_minutes"), GRID_MINUTES);
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        written.texts("days").forEach(day -> days.add(DayOfWeek.valueOf(day.toUpperCase())));
        DayPlan plan = plans.ofCase(visit.file().id()).orElseGet(() -> new DayPlan(visit.file()));
        plan.lay(frame, days, written.has("morning") ? minutes(written, "morning") : null, written.has("evening") ? minutes(written, "evening") : null,
                written.has("discreet"), visit.clinician().displayName(), visit.moment());
        plans.persist(plan);
    }

    /** {@code done} says of each exercise how many sessions of the day were ticked, the first ones. */
    private void tick(DemoVisit visit, Entry written) {
        LocalDate day = LocalDate.parse(written.text("on"));
        Integer before = written.has("before") ? written.integer("before") : null;
        Integer after = written.has("after") ? written.integer("after") : null;
        Entry done = written.entry("done").orElseThrow(() -> written.problem("'done' is missing"));
        Instant arrived = day.atTime(TICKED_AT).atZone(ZoneId.systemDefault()).toInstant();
        for (String exercise : done.keys()) {
            Prescription given = prescriptions.of(visit.file().id()).stream().filter(p -> p.current() && p.exerciseKey().equals(exercise)).findFirst()
                    .orElseThrow(() -> done.problem("this exercise was not given"));
            for (int slot = 1; slot <= done.integer(exercise); slot++) {
                SessionTick tick = new SessionTick(given, day, slot, arrived);
                // pain is told of the last session of the day
                boolean last = slot == done.integer(exercise);
                tick.done(last ? before : null, last ? after : null, last && pain.beyondError(before, after), arrived);
                ticks.persist(tick);
            }
        }
    }

    private void report(DemoVisit visit, Entry written) {
        Instant arrived = at(written, "at");
        List<OwnReportLine> lines = written.entries("zones").stream()
                .map(zone -> OwnReportLine.ofZone(zone.text("zone"), zone.integer("now"), zone.integer("worst"), zone.integer("average"))).toList();
        OwnReport report = new OwnReport(visit.file(), LocalDate.ofInstant(arrived, ZoneId.systemDefault()), lines, List.of(), false, written.has("pain_up"),
                written.optionalText("words").orElse(null), arrived);
        List<OwnReportAnswer> answers = new ArrayList<>();
        written.entry("answers").ifPresent(given -> given.keys().forEach(key -> answers.add(new OwnReportAnswer(
                instruments.find(key).orElseThrow(() -> given.problem("there is no instrument '" + key + "'")), List.of(given.integer(key))))));
        report.answered(answers, List.of());
        reports.persist(report);
    }

    private static Instant at(Entry written, String key) {
        return LocalDateTime.parse(written.text(key)).atZone(ZoneId.systemDefault()).toInstant();
    }

    private static int minutes(Entry written, String key) {
        return LocalTime.parse(written.text(key)).toSecondOfDay() / 60;
    }
}
