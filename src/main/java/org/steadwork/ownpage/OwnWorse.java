package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.MeasureCourse;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.OwnActivities;
import org.steadwork.outcome.scoring.Scored;

/**
 * Tells what a report says got worse beside pain: a measure by more than its error against the last time, or the whole in the patient's
 * own word. A number that is missing at either time is no alarm and no all-clear.
 */
@ApplicationScoped
class OwnWorse {

    @Inject
    Instruments instruments;

    @Inject
    Measures measures;

    @Inject
    OwnActivityRatings ratings;

    /** One line for each measure that got worse; empty when none did, or none can be compared. */
    List<String> of(long caseId, List<OwnReportLine> lines, List<OwnReportAnswer> answers) {
        if (answers.isEmpty() && lines.stream().noneMatch(line -> line.rating() != null)) {
            return List.of();
        }
        Map<String, MeasureCourse> courses = measures.of(caseId).stream().collect(Collectors.toMap(course -> course.instrument().key(), Function.identity()));
        List<String> worse = new ArrayList<>();
        activities(caseId, lines, courses.get(Measures.OWN_ACTIVITIES)).ifPresent(worse::add);
        answers.forEach(answer -> instruments.find(answer.instrument()).flatMap(instrument -> answered(instrument, answer, courses.get(instrument.key())))
                .ifPresent(worse::add));
        return worse;
    }

    private Optional<String> activities(long caseId, List<OwnReportLine> lines, MeasureCourse course) {
        if (course == null || course.latest().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Integer> before = new HashMap<>();
        ratings.byDay(caseId).getOrDefault(course.latest().get().on(), Map.of()).forEach((id, rating) -> before.put(String.valueOf(id), rating));
        Map<String, Integer> now = new HashMap<>();
        lines.stream().filter(OwnReportLine::isActivity).forEach(line -> now.put(line.about(), line.rating()));
        return OwnActivities.compare(before, now).map(two -> ChangeVerdict.of(course.instrument(), course.region(), two.earlierMean(), two.laterMean()))
                .filter(ChangeVerdict::alerts).map(verdict -> fromTo(course.instrument(), verdict));
    }

    private static Optional<String> answered(Instrument instrument, OwnReportAnswer answer, MeasureCourse course) {
        Scored scored = instrument.score(answer.answers());
        if (scored.value().isEmpty()) {
            return Optional.empty();
        }
        double now = scored.value().getAsDouble();
        if (instrument.changeRating().isPresent()) {
            return now <= instrument.changeRating().get().worseTo() ? Optional.of(instrument.label() + " " + number(now) + ", in the patient’s own word") : Optional.empty();
        }
        if (!instrument.outcome() || course == null || course.latest().isEmpty()) {
            return Optional.empty();
        }
        ChangeVerdict verdict = ChangeVerdict.of(instrument, course.region(), course.latest().get().value(), now);
        return verdict.alerts() ? Optional.of(fromTo(instrument, verdict)) : Optional.empty();
    }

    private static String fromTo(Instrument instrument, ChangeVerdict verdict) {
        return instrument.label() + " " + number(verdict.earlier()) + " to " + number(verdict.later());
    }

    private static String number(double value) {
        String text = value == Math.rint(value) ? String.valueOf((long) value) : String.format(Locale.ENGLISH, "%.1f", value);
        return text.replace('-', '−');
    }
}
