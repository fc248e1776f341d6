package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.steadwork.body.BodyChart;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.drawing.Trend;
import org.steadwork.drawing.TrendChart;
import org.steadwork.drawing.TrendSize;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.meeting.CaseBrief.Line;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.MeasureTrends;
import org.steadwork.outcome.MeasureView;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.Shown;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;

/** Puts a case on one page, in a fixed number of queries. */
@ApplicationScoped
class CaseBriefs {

    private static final int MOST_SCORES = 3;
    private static final String PAIN = "nprs";

    @Inject
    SymptomReports reports;

    @Inject
    BodyChart chart;

    @Inject
    Visits visits;

    @Inject
    Measures measures;

    @Inject
    BriefLines lines;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    CaseName names;

    @Inject
    Clock clock;

    CaseBrief of(CaseFile file, Room room) {
        LocalDate today = LocalDate.now(clock);
        List<SymptomReport> reported = reports.of(file.id());
        List<Visit> all = visits.of(file.id());
        List<Line> page = new ArrayList<>();
        page.add(new Line("Person and job", InformationCategory.IDENTITY, List.of(person(file.patient(), today))));
        page.add(new Line("Complaint", InformationCategory.SYMPTOMS, complaint(file, reported, today)));
        page.add(new Line("Visits", InformationCategory.ATTENDANCE, List.of(attendance(file, all))));
        page.addAll(lines.of(file, today));
        return new CaseBrief(names.of(file.patient(), room.clinicians()), page, scores(file, reported, all));
    }

    /** Age as a band of ten years and the kind of job: enough to think with, too little to name somebody. */
    static String person(Patient patient, LocalDate today) {
        int age = patient.ageOn(today);
        int from = (age - 5) / 10 * 10 + 5;
        String band = age < 25 ? "Under 25" : age >= 65 ? "65 or older" : from + " to " + (from + 9);
        String hours = patient.hoursAWeek() == null ? "" : ", " + patient.hoursAWeek().stripTrailingZeros().toPlainString() + "\u00a0h a week";
        return band + ", " + (patient.jobTitle() == null ? "job not entered" : patient.jobTitle().toLowerCase(Locale.ENGLISH) + hours);
    }

    private List<String> complaint(CaseFile file, List<SymptomReport> reported, LocalDate today) {
        Set<String> places = new LinkedHashSet<>();
        if (!reported.isEmpty()) {
            reported.get(0).readings().forEach(reading -> places.add(chart.zone(reading.zone()).label().toLowerCase(Locale.ROOT)));
        }
        String now = reported.isEmpty() ? "no symptom report" : reported.get(0).symptomFree() ? "no symptoms on " + Dates.shown(reported.get(0).reportedOn())
                : String.join(", ", places) + ", " + Dates.shown(reported.get(0).reportedOn());
        String onset = file.onsetOn() == null ? "Onset not known" : weeks(file.onsetOn(), today) + " since onset";
        return List.of(file.complaint() + ": " + now, onset + ", " + weeks(file.openedOn(), today) + " since the first visit");
    }

    private static String weeks(LocalDate from, LocalDate to) {
        long weeks = ChronoUnit.WEEKS.between(from, to);
        return weeks + (weeks == 1 ? " week" : " weeks");
    }

    private String attendance(CaseFile file, List<Visit> all) {
        long attended = count(all, Attendance.ATTENDED);
        long missed = count(all, Attendance.MISSED);
        long late = count(all, Attendance.LATE_CANCELLED);
        String planned = outcomes.planned(file.id()).filter(agreed -> agreed.visits() != null).map(agreed -> ", " + agreed.visits() + " planned").orElse("");
        return attended + " attended, " + (missed == 0 ? "none" : missed) + " missed" + (late == 0 ? "" : ", " + late + " cancelled late") + planned;
    }

    private static long count(List<Visit> all, Attendance attendance) {
        return all.stream().filter(visit -> visit.attendance() == attendance).count();
    }

    private List<CaseBrief.Score> scores(CaseFile file, List<SymptomReport> reported, List<Visit> all) {
        List<MeasureCourse> courses = measures.of(file.id(), reported).stream()
                .filter(course -> course.instrument().outcome() && !course.points().isEmpty()).toList();
        List<MeasureCourse> chosen = new ArrayList<>();
        courses.stream().findFirst().ifPresent(chosen::add);
        courses.stream().filter(course -> course.instrument().key().equals(Measures.OWN_ACTIVITIES)).findFirst().ifPresent(chosen::add);
        courses.stream().filter(course -> course.instrument().key().startsWith(PAIN)).findFirst().ifPresent(chosen::add);
        chosen.addAll(courses);
        return chosen.stream().distinct().limit(MOST_SCORES).map(course -> score(course, all)).toList();
    }

    private static CaseBrief.Score score(MeasureCourse course, List<Visit> all) {
        MeasureView view = new MeasureView(course, "");
        MeasureCourse.Point first = course.first().orElseThrow();
        MeasureCourse.Point last = course.latest().orElseThrow();
        boolean single = course.points().size() == 1;
        Trend trend = MeasureTrends.of("m", course, all, List.of());
        InformationCategory category = course.instrument().key().startsWith(PAIN) ? InformationCategory.PAIN_SCORES : InformationCategory.OUTCOME_SCORES;
        return new CaseBrief.Score(view.label(), category, Shown.value(course.instrument(), first.value()), Dates.shown(first.on()),
                single ? "not yet" : Shown.value(course.instrument(), last.value()), single ? "" : Dates.shown(last.on()), view.by(),
                amount(course.sinceFirst().map(ChangeVerdict::error)), amount(course.sinceFirst().map(ChangeVerdict::importance)), view.words(),
                new CaseBrief.Chart(TrendChart.multiple(trend), TrendChart.draw(trend, TrendSize.SMALL)));
    }

    private static String amount(Optional<OptionalDouble> amount) {
        return amount.isEmpty() ? "\u2013" : amount.get().isPresent() ? Shown.amount(amount.get().getAsDouble()) : "not known";
    }
}
