package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Threshold;

/**
 * Open cases whose latest score is worse than the one before by more than measurement error. The entry leaves when a later score is no
 * longer worse, or the case is closed. A threshold that is only remembered raises no entry by itself.
 */
@ApplicationScoped
class WorseCases implements Attention {

    private static final String FROM_MEMORY = "M";

    @Inject
    Measures measures;

    @Override
    public List<Entry> entries(LocalDate today) {
        return measures.ofOpenCases().entrySet().stream().map(open -> entry(open.getKey(), open.getValue())).flatMap(Optional::stream).toList();
    }

    private static Optional<Entry> entry(CaseFile file, List<MeasureCourse> courses) {
        List<MeasureCourse> worse = courses.stream().filter(WorseCases::worse).toList();
        if (worse.isEmpty()) {
            return Optional.empty();
        }
        LocalDate since = worse.stream().map(course -> course.latest().orElseThrow().on()).min(LocalDate::compareTo).orElseThrow();
        String reason = worse.stream().map(WorseCases::words).collect(Collectors.joining("; ")) + ": worse by more than measurement error.";
        return Optional.of(new Entry(file.id(), file.patient().name(), Urgency.TODAY, "Got worse", since, reason, "Look at what got worse",
                CaseTab.OUTCOMES.href(file.id())));
    }

    private static boolean worse(MeasureCourse course) {
        boolean sourced = course.error().or(course::importance).map(Threshold::tag).filter(tag -> !tag.equals(FROM_MEMORY)).isPresent();
        return sourced && course.sinceLast().map(ChangeVerdict::kind).filter(kind -> kind == ChangeVerdict.Kind.WORSE).isPresent();
    }

    private static String words(MeasureCourse course) {
        ChangeVerdict verdict = course.sinceLast().orElseThrow();
        return course.instrument().label() + " " + Shown.value(course.instrument(), verdict.earlier()) + " to "
                + Shown.value(course.instrument(), verdict.later());
    }
}
