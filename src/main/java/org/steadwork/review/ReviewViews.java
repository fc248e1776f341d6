package org.steadwork.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.outcome.MeasureView;
import org.steadwork.outcome.MeasureViews;
import org.steadwork.outcome.OwnActivity;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.RatingForm;
import org.steadwork.outcome.ReportedPain;
import org.steadwork.web.Form;

/** Gathers what the review of a visit shows, and drafts its note. */
@ApplicationScoped
class ReviewViews {

    static final int NOT_STORED = 0;

    @Inject
    MeasureViews measures;

    @Inject
    Asked asked;

    @Inject
    SymptomReports reports;

    @Inject
    OwnActivityRatings activities;

    @Inject
    WorkStatuses statuses;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    Surroundings surroundings;

    @Inject
    Clock clock;

    /**
     * Makes the view.
     *
     * @param typed the form of the visit as typed, or null to show what is stored
     * @param noteTyped the form of the note as typed, or null
     * @param draftAnew whether to draft the note from what is recorded even though a draft is stored
     */
    ReviewView of(Visit visit, Form typed, Form noteTyped, boolean draftAnew, List<String> bars) {
        long caseId = visit.caseFile().id();
        LocalDate day = visit.visitedOn();
        List<SymptomReport> all = reports.of(caseId);
        SymptomReport report = all.stream().filter(r -> r.reportedOn().equals(day)).findFirst().orElse(null);
        List<MeasureView> views = measures.of(visit.caseFile(), all, day);
        Map<LocalDate, Map<Long, Integer>> rated = activities.byDay(caseId);
        List<OwnActivity> named = activities.activities(caseId);
        WorkStatus status = statuses.of(caseId).on(day).orElse(null);
        Optional<VisitNote> note = notes.of(visit);
        Asked.Questions questions = asked.at(caseId, day, typed, rated.containsKey(day));
        Form noteForm = noteTyped;
        boolean drafted = noteTyped == null && (note.isEmpty() || draftAnew);
        Surroundings.Lines around = surroundings.of(visit.caseFile(), day);
        if (noteForm == null) {
            noteForm = drafted ? drafted(visit, report, views, OwnLines.of(named, rated, day, questions.own()), around, status, note) : show(note.get());
        }
        Form form = typed == null ? shown(visit, status, questions, named, rated) : typed;
        return new ReviewView(visit, visits.latestAfter(caseId, day, visit.number()).orElse(null), form, questions, rows(named, rated, day), views,
                report == null ? "" : words(ReportedPain.of(report)), around, note.orElse(null), noteForm, drafted, bars);
    }

    /** Puts a stored note into a form. */
    static Form show(VisitNote note) {
        return Form.empty().with("version", note.version() + 1).with("subjective", note.subjective()).with("objective", note.objective())
                .with("assessment", note.assessment()).with("plan", note.plan());
    }

    Form shown(Visit visit) {
        long caseId = visit.caseFile().id();
        Map<LocalDate, Map<Long, Integer>> rated = activities.byDay(caseId);
        Asked.Questions questions = asked.at(caseId, visit.visitedOn(), null, rated.containsKey(visit.visitedOn()));
        return shown(visit, statuses.of(caseId).on(visit.visitedOn()).orElse(null), questions, activities.activities(caseId), rated);
    }

    private Form shown(Visit visit, WorkStatus status, Asked.Questions questions, List<OwnActivity> named, Map<LocalDate, Map<Long, Integer>> rated) {
        Form form = ReviewForm.show(visit, status);
        // whoever opens today's planned visit has the patient there
        if (visit.attendance() == Attendance.PLANNED && visit.visitedOn().equals(LocalDate.now(clock))) {
            form.with("attendance", "attended");
        }
        if (questions.own()) {
            named.forEach(activity -> form.with("a_" + activity.id(), asked(rated.getOrDefault(visit.visitedOn(), Map.of()).get(activity.id()))));
        }
        questions.ratings().forEach(rating -> form.with(rating.field(), asked(rating.stored())));
        return form;
    }

    private static Object asked(Object rating) {
        return rating == null ? RatingForm.NOT_ASKED : rating;
    }

    private static Form drafted(Visit visit, SymptomReport report, List<MeasureView> views, String own,
            Surroundings.Lines around, WorkStatus status, Optional<VisitNote> note) {
        NoteDraft draft = NoteDraft.of(visit.caseFile(), visit.visitedOn(), report, views, own, around, status);
        return Form.empty().with("version", note.map(n -> n.version() + 1).orElse(NOT_STORED)).with("subjective", draft.subjective())
                .with("objective", draft.objective()).with("assessment", draft.assessment()).with("plan", draft.plan());
    }

    private static List<ReviewView.ActivityRow> rows(List<OwnActivity> named, Map<LocalDate, Map<Long, Integer>> rated, LocalDate day) {
        return named.stream().map(activity -> new ReviewView.ActivityRow("a_" + activity.id(), activity.words(), OwnLines.before(activity, rated, day))).toList();
    }

    private static String words(ReportedPain pain) {
        return "now " + word(pain.now()) + ", average " + word(pain.average()) + ", worst " + word(pain.worst());
    }

    private static String word(Integer rating) {
        return rating == null ? "not asked" : rating.toString();
    }
}
