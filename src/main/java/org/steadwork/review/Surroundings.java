package org.steadwork.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.ownpage.TickedWeeks;
import org.steadwork.redflag.CaseStatus;
import org.steadwork.redflag.RedFlags;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.FindingLives;
import org.steadwork.workplace.FindingStage;
import org.steadwork.workplace.Findings;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;

/** What the other features say at a review: how the programme was kept, what became of the findings, the state of the red flags. */
@ApplicationScoped
class Surroundings {

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    TickedWeeks ticked;

    @Inject
    Findings findings;

    @Inject
    FindingLives lives;

    @Inject
    WorkplaceContent workplace;

    @Inject
    RedFlags redFlags;

    /** One finding at the work place with what became of it; {@code field} is null once it is done. */
    record FindingRow(String field, String label, String stage) {
    }

    /**
     * What stands around a review, in lines ready to be shown and drafted.
     *
     * @param ticked what the patient ticked at home in the week before, with its gaps; patient-reported
     */
    record Lines(List<String> programme, List<String> ticked, List<FindingRow> findings, List<String> putRight, String redFlags) {
    }

    Lines of(CaseFile file, LocalDate day) {
        List<Finding> all = findings.of(file.id());
        List<FindingRow> rows = all.stream().filter(finding -> finding.stage() != FindingStage.CHECKED || day.equals(finding.checkedOn()))
                .map(this::row).toList();
        List<String> putRight = all.stream().filter(finding -> day.equals(finding.doneOn()) || day.equals(finding.checkedOn())).map(this::label).toList();
        return new Lines(programme(file, day), ticked.lines(file, day), rows, putRight, redFlags(redFlags.status(file.id(), day)));
    }

    /** Marks the findings ticked in the form as put right on a day. */
    void putRight(CaseFile file, Form form, LocalDate day) {
        findings.of(file.id()).stream().filter(finding -> open(finding) && !finding.foundOn().isAfter(day) && form.ticked(field(finding)))
                .forEach(finding -> lives.record(finding, FindingStage.DONE, day, null));
    }

    /** What was given on the day, with the last week reported by then. */
    private List<String> programme(CaseFile file, LocalDate day) {
        Map<Long, List<AdherenceEntry>> reported = entries.ofCase(file.id());
        List<String> lines = new ArrayList<>();
        for (Prescription given : prescriptions.of(file.id())) {
            if (!given.startedOn().isAfter(day) && (given.current() || given.endedOn().isAfter(day))) {
                String name = catalogue.find(given.exerciseKey()).map(Exercise::name).orElse(given.exerciseKey());
                List<AdherenceEntry> own = reported.getOrDefault(given.id(), List.of()).stream().filter(entry -> !entry.weekTo().isAfter(day)).toList();
                lines.add(name + ": " + (own.isEmpty() ? "not reported" : kept(own.get(own.size() - 1))));
            }
        }
        return lines;
    }

    private static String kept(AdherenceEntry entry) {
        Adherence adherence = entry.adherence();
        return (adherence.done() == null ? "not reported" : adherence.done() + " of " + adherence.planned() + " sessions done") + " in the week to "
                + Dates.shown(entry.weekTo());
    }

    private FindingRow row(Finding finding) {
        return new FindingRow(open(finding) ? field(finding) : null, label(finding), finding.stage().label() + " " + Dates.shown(finding.stageOn()));
    }

    private String label(Finding finding) {
        return workplace.criterion(finding.criterionId()).map(Criterion::label).orElse(finding.criterionId());
    }

    private static boolean open(Finding finding) {
        return finding.stage() != FindingStage.DONE && finding.stage() != FindingStage.CHECKED;
    }

    private static String field(Finding finding) {
        return "done_" + finding.id();
    }

    private static String redFlags(CaseStatus status) {
        String screened = status.screenedOn().map(day -> ", screen of " + Dates.shown(day)).orElse(", not screened");
        return "Red flags: " + status.verdict().label() + screened + (status.outOfDate() ? ", out of date" : "") + ".";
    }
}
