package org.steadwork.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.MeasureView;
import org.steadwork.outcome.ReportedPain;
import org.steadwork.outcome.Shown;
import org.steadwork.web.Dates;

/**
 * A visit note drafted from what was recorded: a start for the clinician, who edits and signs it. What was not recorded is
 * said to be not entered; nothing is made up.
 */
record NoteDraft(String subjective, String objective, String assessment, String plan) {

    /**
     * Drafts the note of a visit.
     *
     * @param report the symptom report of the day, or null
     * @param own the own activities with the day's rating, a sentence
     * @param around what the other features say
     */
    static NoteDraft of(CaseFile file, LocalDate day, SymptomReport report, List<MeasureView> measures, String own,
            Surroundings.Lines around, WorkStatus status) {
        return new NoteDraft(subjective(day, report, measures), objective(day, measures, own, around), assessment(day, measures, around),
                plan(file, day, status));
    }

    private static String subjective(LocalDate day, SymptomReport report, List<MeasureView> measures) {
        List<String> lines = new ArrayList<>();
        if (report != null && report.symptomFree()) {
            lines.add("Reports no symptoms.");
        } else if (report != null) {
            ReportedPain pain = ReportedPain.of(report);
            lines.add("Pain now " + of10(pain.now()) + ", average " + of10(pain.average()) + ", worst " + of10(pain.worst()) + ".");
            if (report.pattern().ownWords() != null) {
                lines.add("“" + report.pattern().ownWords() + "”");
            }
        } else {
            List<String> pain = new ArrayList<>();
            for (String rating : List.of("now", "average", "worst")) {
                measures.stream().map(MeasureView::course).filter(course -> course.instrument().key().equals("nprs_" + rating))
                        .flatMap(course -> course.on(day).stream().map(p -> rating + " " + Shown.value(course.instrument(), p.value()) + " of 10"))
                        .forEach(pain::add);
            }
            lines.add(pain.isEmpty() ? "Pain: not entered." : "Pain " + String.join(", ", pain) + ".");
        }
        return String.join("\n", lines);
    }

    private static String objective(LocalDate day, List<MeasureView> measures, String own, Surroundings.Lines around) {
        List<String> lines = new ArrayList<>();
        lines.add(own);
        for (MeasureView measure : measures) {
            if (measure.course().instrument().items().size() > 1 && !measure.course().instrument().key().equals("psfs")) {
                measure.course().on(day).ifPresent(p -> lines.add(measure.label() + " " + Shown.value(measure.course().instrument(), p.value())
                        + (p.estimated() ? " (missing items filled in by the rule)" : "") + "."));
            }
        }
        if (!around.programme().isEmpty()) {
            lines.add("Exercises: " + String.join("; ", around.programme()) + ".");
        }
        if (!around.ticked().isEmpty()) {
            lines.add("Ticked at home in the week before, patient-reported: " + String.join("; ", around.ticked()) + ".");
        }
        if (!around.putRight().isEmpty()) {
            lines.add("Put right at the work place: " + String.join("; ", around.putRight()) + ".");
        }
        return String.join("\n", lines);
    }

    private static String assessment(LocalDate day, List<MeasureView> measures, Surroundings.Lines around) {
        List<String> lines = new ArrayList<>();
        for (MeasureView measure : measures) {
            MeasureCourse course = measure.course();
            Optional<MeasureCourse.Point> today = course.on(day);
            if (today.isEmpty() || course.sinceFirst().isEmpty() || !course.latest().orElseThrow().on().equals(day)) {
                continue;
            }
            lines.add(measure.label() + ": " + measure.by() + " since " + Dates.shown(course.points().get(0).on()) + ", "
                    + course.sinceFirst().get().kind().words() + (course.points().size() > 2 ? "; " + measure.sinceLast() : "") + ".");
        }
        if (lines.isEmpty()) {
            lines.add("Change: nothing to compare at this visit.");
        }
        lines.add(around.redFlags());
        return String.join("\n", lines);
    }

    private static String plan(CaseFile file, LocalDate day, WorkStatus status) {
        String work = status == null ? "Work status: not entered." : "Work status: " + status.code().label().toLowerCase(Locale.ROOT)
                + (status.details().isEmpty() ? "" : ", " + status.details()) + ", from " + Dates.shown(status.from())
                + (status.until() == null ? "" : " until " + Dates.shown(status.until())) + ", decided by " + status.decidedBy().label() + ".";
        String next = file.nextReviewOn() == null || file.nextReviewOn().isBefore(day) ? "Next review: to be set."
                : "Next review: " + Dates.shown(file.nextReviewOn()) + ".";
        return work + "\n" + next;
    }

    private static String of10(Integer rating) {
        return rating == null ? "not asked" : rating + " of 10";
    }
}
