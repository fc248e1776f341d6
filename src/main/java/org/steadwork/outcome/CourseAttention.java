package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;
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

    private static final String WORSE = "got_worse";
    private static final String STANDSTILL = "standstill";

    @Inject
    Measures measures;

    @Inject
    Goals goals;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(WORSE, STANDSTILL);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        Map<Long, List<Goal>> set = goals.ofOpenCases(scope).stream().collect(Collectors.groupingBy(goal -> goal.caseFile().id()));
        List<Entry> entries = new ArrayList<>();
        measures.ofOpenCases(scope).forEach((file, courses) -> worse(file, courses)
                .or(() -> standstill(file, courses, set.getOrDefault(file.id(), List.of()))).ifPresent(entries::add));
        return entries;
    }

    private Optional<Entry> worse(CaseFile file, List<MeasureCourse> courses) {
        List<MeasureCourse> worse = courses.stream().filter(course -> course.sinceLast().filter(ChangeVerdict::alerts).isPresent()).toList();
        if (worse.isEmpty()) {
            return Optional.empty();
        }
        LocalDate since = worse.stream().map(course -> course.latest().orElseThrow().on()).min(LocalDate::compareTo).orElseThrow();
        LocalDate last = worse.stream().map(course -> course.latest().orElseThrow().on()).max(LocalDate::compareTo).orElseThrow();
        return Optional.of(rules.rule(WORSE).entry(file, last.toString(), since, CaseTab.OUTCOMES.href(file.id()),
                Map.of("scores", worse.stream().map(CourseAttention::words).collect(Collectors.joining("; ")),
                        "error", worse.stream().map(CourseAttention::error).collect(Collectors.joining("; ")))).at(worse.size()));
    }

    private Optional<Entry> standstill(CaseFile file, List<MeasureCourse> courses, List<Goal> set) {
        return courses.stream().filter(course -> course.instrument().outcome()).findFirst()
                .filter(course -> sourced(course.error()) && sourced(course.importance()))
                .filter(course -> Standstill.reached(course, file.nextReviewOn(), set))
                .map(course -> rules.rule(STANDSTILL).entry(file, course.latest().orElseThrow().on().toString(), course.latest().orElseThrow().on(),
                        CaseTab.OUTCOMES.href(file.id()), Map.of("scores", Standstill.words(course),
                                "error", amount(course, course.error(), course.first().orElseThrow().value()),
                                "importance", amount(course, course.importance(), course.first().orElseThrow().value()))));
    }

    private static boolean sourced(Optional<Threshold> threshold) {
        return threshold.filter(amount -> !amount.fromMemory()).isPresent();
    }

    /** Says how much change is more than measurement error, and who found it. */
    private static String error(MeasureCourse course) {
        double earlier = course.sinceLast().orElseThrow().earlier();
        return amount(course, course.instrument().error(course.region(), earlier), earlier);
    }

    private static String amount(MeasureCourse course, Optional<Threshold> threshold, double baseline) {
        return threshold.map(amount -> course.instrument().label() + " " + Shown.amount(amount.points(baseline)) + " (" + amount.source()
                + (amount.fromMemory() ? ", from memory" : "") + ")").orElse(course.instrument().label() + ": not known");
    }

    private static String words(MeasureCourse course) {
        ChangeVerdict verdict = course.sinceLast().orElseThrow();
        return course.instrument().label() + " " + Shown.value(course.instrument(), verdict.earlier()) + " to "
                + Shown.value(course.instrument(), verdict.later());
    }
}
