package org.steadwork.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.PainRule;
import org.steadwork.exercise.dayplan.WorkingDay;

/**
 * One exercise of a programme as pages show it.
 *
 * @param reported what the patient reported, the earliest first
 */
record ProgrammeItem(Prescription given, Exercise exercise, CaseSafety.Verdict verdict, List<AdherenceEntry> reported, WorkingDay day, PainRule pain) {

    private static final int WEEKS_THAT_SHOW_A_RISE = 3;

    /** A part of the dose in the row of numbers. */
    record Part(String label, String value) {
    }

    /** The dose as the numbers that line up from row to row. */
    public List<Part> parts() {
        Dose dose = given.dose();
        List<Part> parts = new ArrayList<>();
        if (dose.minutes() != null) {
            parts.add(new Part("Minutes", dose.minutes().shown()));
        } else {
            parts.add(new Part("Times", dose.repetitions().shown() + (dose.sides() > 1 ? " a " + per() : "")));
            parts.add(new Part("Sets", dose.sets() == null ? "1" : dose.sets().shown()));
            parts.add(new Part("Hold", dose.hasHold() ? dose.hold().shown() + " s" : "–"));
        }
        parts.add(dose.everyHours() != null ? new Part("Every", dose.everyHours().shown() + " h")
                : dose.timesADay() != null && dose.timesADay().high() > 1 ? new Part("A day", dose.timesADay().shown() + " ×")
                : new Part("A week", dose.daysAWeek().shown() + " ×"));
        return parts;
    }

    public String inWords() {
        return DoseWords.of(given.dose(), per());
    }

    private String per() {
        return exercise.per().isEmpty() ? "side" : exercise.per();
    }

    /** Address of the figure for the side prescribed, with the hold prescribed in place of the usual one. */
    public String figure() {
        String hold = given.dose().hasHold() ? given.dose().hold().toString() : "0";
        String side = given.side() == PrescribedSide.LEFT ? "&side=left" : given.side() == PrescribedSide.RIGHT ? "&side=right" : "";
        return "/figures/" + exercise.key() + ".svg?hold=" + hold + side;
    }

    /** The side in words where one side is meant; empty otherwise. */
    public String sideWords() {
        return given.side() == PrescribedSide.LEFT || given.side() == PrescribedSide.RIGHT ? given.side().label().toLowerCase(Locale.ROOT) : "";
    }

    public double minutesADay() {
        return day.minutesADay(given.dose(), exercise.tempo());
    }

    public int plannedAWeek() {
        return day.sessionsAWeek(given.dose());
    }

    public boolean held() {
        return verdict.held();
    }

    public AdherenceEntry latest() {
        return reported.isEmpty() ? null : reported.get(reported.size() - 1);
    }

    /** For example {@code 17 of 20}; only the number planned while nothing was reported. */
    public String kept() {
        if (latest() == null) {
            return String.valueOf(plannedAWeek());
        }
        Adherence last = latest().adherence();
        return (last.done() == null ? "–" : last.done()) + " of " + last.planned();
    }

    /** For example {@code sessions in the week to 4 Apr 2030, 85 %, well kept}. */
    public String keptWords() {
        if (latest() == null) {
            return "sessions a week planned; none reported yet";
        }
        Adherence last = latest().adherence();
        return "sessions reported" + (last.perCent().isPresent() ? ", " + last.perCent().getAsInt() + "\u00a0%" : "") + ", " + last.band().label();
    }

    /** Pain that rose over each of the last three weeks reported. */
    public boolean painRises() {
        List<Integer> pain = reported.stream().map(AdherenceEntry::painDuring).filter(p -> p != null).toList();
        if (pain.size() < WEEKS_THAT_SHOW_A_RISE) {
            return false;
        }
        for (int i = pain.size() - WEEKS_THAT_SHOW_A_RISE + 1; i < pain.size(); i++) {
            if (pain.get(i) <= pain.get(i - 1)) {
                return false;
            }
        }
        return true;
    }

    /** What pain and adherence together propose; null when nothing was reported. */
    public PainRule.Advice advice() {
        return latest() == null ? null
                : pain.withCeiling(given.painCeiling()).advice(latest().painDuring(), latest().nextMorning(), painRises(), latest().adherence().band());
    }

    /** The step that goes with the proposal, from the catalogue; empty when there is none. */
    public String step() {
        if (advice() == null) {
            return "";
        }
        return switch (advice()) {
            case PROGRESS, HOLD -> exercise.progression();
            case LESS_LOAD, STEP_BACK, REVIEW -> exercise.regression();
            case SMALLER -> "Fewer sessions a day, or fewer exercises at a time";
            case ASK -> "";
        };
    }
}
