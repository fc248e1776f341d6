package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Threshold;

/**
 * Open cases whose latest score is worse than the one before by more than measurement error, and those whose leading measure stands
 * still. An entry leaves when a later score says otherwise, or the case is closed. A threshold that is only remembered raises no
 * entry by itself.
 */
@ApplicationScoped
class CourseAttention implements Attention {

    @Inject
    Measures measures;

    @Inject
    Goals goals;

    @Override
    public List<Entry> entries(LocalDate today) {
        Map<Long, List<Goal>> set = goals.ofOpenCases().stream().collect(Collectors.groupingBy(goal -> goal.caseFile().id()));
        List<Entry> entries = new ArrayList<>();
        measures.ofOpenCases().forEach((file, courses) -> worse(file, courses)
                .or(() -> standstill(file, courses, set.getOrDefault(file.id(), List.of()))).ifPresent(entries::add));
        return entries;
    }

    private static Optional<Entry> worse(CaseFile file, List<MeasureCourse> courses) {
        List<MeasureCourse> worse = courses.stream().filter(course -> course.sinceLast().filter(ChangeVerdict::alerts).isPresent()).toList();
        if (worse.isEmpty()) {
            return Optional.empty();
        }
        LocalDate since = worse.stream().map(course -> course.latest().orElseThrow().on()).min(LocalDate::compareTo).orElseThrow();
        String reason = worse.stream().map(CourseAttention::words).collect(Collectors.joining("; ")) + ": worse by more than measurement error.";
        return Optional.of(entry(file, Urgency.TODAY, "Got worse", since, reason, "Look at what got worse"));
    }

    private static Optional<Entry> standstill(CaseFile file, List<MeasureCourse> courses, List<Goal> set) {
        return courses.stream().filter(course -> course.instrument().outcome()).findFirst()
                .filter(course -> sourced(course.error()) && sourced(course.importance()))
                .filter(course -> Standstill.reached(course, file.nextReviewOn(), set))
                .map(course -> entry(file, Urgency.SOON, "Standstill", course.latest().orElseThrow().on(), Standstill.words(course)
                        + ", goals not met.", "Think again about the plan"));
    }

    private static boolean sourced(Optional<Threshold> threshold) {
        return threshold.filter(amount -> !amount.fromMemory()).isPresent();
    }

    private static Entry entry(CaseFile file, Urgency urgency, String label, LocalDate since, String reason, String action) {
        return new Entry(file.id(), file.patient().name(), urgency, label, since, reason, action, CaseTab.OUTCOMES.href(file.id()));
    }

    private static String words(MeasureCourse course) {
        ChangeVerdict verdict = course.sinceLast().orElseThrow();
        return course.instrument().label() + " " + Shown.value(course.instrument(), verdict.earlier()) + " to "
                + Shown.value(course.instrument(), verdict.later());
    }
}
